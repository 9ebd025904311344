import { checkedNumber } from './checked-number.ts';

/** What a nameplate gives: real power (with power factor and, for a motor, efficiency) or apparent power. */
export type NameplateLoad = {
  /** Voltage [V]: between the two conductors, or line to line for three phases. */
  voltageV: number;
  phases: 1 | 3;
} & (
  | {
      /** Real power [W]: drawn, or delivered where an efficiency is given. */
      realPowerW: number;
      /** Above 0 up to 1; default 1. */
      powerFactor?: number;
      /** Above 0 up to 1; default 1. */
      efficiencyRatio?: number;
      apparentPowerVa?: never;
    }
  | { apparentPowerVa: number; realPowerW?: never; powerFactor?: never; efficiencyRatio?: never }
);

/**
 * Line current and apparent power of a balanced load from its nameplate.
 *
 * @param load.realPowerW        real power [W], ≥ 0: electrical, or at the shaft where efficiencyRatio is given
 * @param load.apparentPowerVa   apparent power [VA], ≥ 0, instead of real power
 * @param load.powerFactor       power factor [1], above 0 up to 1; default 1
 * @param load.efficiencyRatio   output by input [1], above 0 up to 1; default 1
 * @param load.voltageV          voltage [V], above 0; line to line for three phases
 * @param load.phases            1 or 3
 * @returns currentA, r.m.s. line current [A], and apparentPowerVa [VA]
 * @throws   {RangeError} a value outside its limits, or not exactly one kind of power
 * Formula:  S = P/(η·PF);  I = S/V for one phase, S/(√3·V) for three
 * Valid for: balanced loads at rated voltage in steady running; not for starting.
 * Source:   bird, ex. 16.12 and 19.9
 * Example:  loadCurrent({ realPowerW: 4800, efficiencyRatio: 0.8, powerFactor: 0.625, voltageV: 240, phases: 1 }).currentA → 40
 */
export function loadCurrent(load: NameplateLoad): { currentA: number; apparentPowerVa: number } {
  if ((load.realPowerW === undefined) === (load.apparentPowerVa === undefined)) {
    throw new RangeError('loadCurrent: expected either realPowerW or apparentPowerVa');
  }
  const voltageV = checkedNumber('voltageV', load.voltageV, { above: 0 });
  const powerFactor = checkedNumber('powerFactor', load.powerFactor ?? 1, { above: 0, max: 1 });
  const efficiency = checkedNumber('efficiencyRatio', load.efficiencyRatio ?? 1, { above: 0, max: 1 });
  const apparentPowerVa =
    load.realPowerW === undefined
      ? checkedNumber('apparentPowerVa', load.apparentPowerVa, { min: 0 })
      : checkedNumber('realPowerW', load.realPowerW, { min: 0 }) / (powerFactor * efficiency);
  if (load.phases !== 1 && load.phases !== 3)
    throw new RangeError(`phases: expected 1 or 3, found ${load.phases}`);
  const phaseFactor = load.phases === 3 ? Math.sqrt(3) : 1;
  return { currentA: apparentPowerVa / (phaseFactor * voltageV), apparentPowerVa };
}
