import { checkedNumber } from '../../ac/checked-number.ts';

/** The supply side of a frequency converter: a rectifier with a reservoir. */
export interface RectifierInput {
  readonly phases: 1 | 3;
  /** output by input power (0–1) */
  readonly efficiencyRatio: number;
  /** real by apparent power of the input, distortion included (0–1) */
  readonly powerFactor: number;
  /** peak by r.m.s. of the input current, √2 for a sine */
  readonly crestFactor: number;
}

/** Common practice, no source: a small converter on one phase without a choke. */
export const singlePhaseRectifier: RectifierInput = {
  phases: 1,
  efficiencyRatio: 0.95,
  powerFactor: 0.65,
  crestFactor: 2.5,
};

/** Common practice, no source: a converter on three phases with a choke. */
export const threePhaseRectifier: RectifierInput = {
  phases: 3,
  efficiencyRatio: 0.96,
  powerFactor: 0.9,
  crestFactor: 1.8,
};

/**
 * What a frequency converter draws for the power it gives: watts, not the motor's reactive current, but in short
 * pulses.
 *
 * @param given.input         see `RectifierInput`
 * @param given.outputPowerW  power to the motor [W], ≥ 0
 * @param given.voltageV      of one phase of the supply [V], > 0
 * @returns inputPowerW [W]; apparentPowerVa [VA]; r.m.s. currentA and its peakA [A], of one phase
 * @throws  {RangeError} a value outside its limits
 * Formula: I = P/(η·PF·m·V), î = crest factor·I
 * Source:  derived (definitions of efficiency, power factor and crest factor)
 * Example: rectifierInput({ input: singlePhaseRectifier, outputPowerW: 1500, voltageV: 230 }).currentA → 10.56
 */
export const rectifierInput = (given: {
  input: RectifierInput;
  outputPowerW: number;
  voltageV: number;
}): { inputPowerW: number; apparentPowerVa: number; currentA: number; peakA: number } => {
  const { phases, efficiencyRatio, powerFactor, crestFactor } = given.input;
  checkedNumber('input.efficiencyRatio', efficiencyRatio, { above: 0, max: 1 });
  checkedNumber('input.powerFactor', powerFactor, { above: 0, max: 1 });
  checkedNumber('input.crestFactor', crestFactor, { min: 1 });
  checkedNumber('voltageV', given.voltageV, { above: 0 });
  const inputPowerW = checkedNumber('outputPowerW', given.outputPowerW, { min: 0 }) / efficiencyRatio;
  const apparentPowerVa = inputPowerW / powerFactor;
  const currentA = apparentPowerVa / phases / given.voltageV;
  return { inputPowerW, apparentPowerVa, currentA, peakA: crestFactor * currentA };
};
