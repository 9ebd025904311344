import { heatCurve, settledHeat } from './heat-target.ts';
import type { HeatState, InverterModel } from './model.ts';
import { curveExtremes } from './thermal/time-to-rise.ts';

/** A stretch of constant current, from a state of heat. */
export interface HeatStretch {
  readonly model: InverterModel;
  readonly heat: HeatState;
  /** r.m.s. output current [A], ≥ 0; null when the unit is off */
  readonly currentA: number | null;
  readonly durationS: number;
}

/**
 * Heat of both nodes after a stretch of constant current.
 *
 * @param stretch.model      a solved inverter
 * @param stretch.heat       heat of both nodes at the start
 * @param stretch.currentA   r.m.s. output current [A], ≥ 0; null for off
 * @param stretch.durationS  length [s], ≥ 0
 * @returns heat of the fast and the slow node at the end
 * @throws  nothing
 * Source:  foster-notebook
 * Example: heatAfter({ model: exampleModel, heat: { fast: 0.3, slow: 0.7 }, currentA: null, durationS: 3600 }).slow → 0.2575
 */
export const heatAfter = (stretch: HeatStretch): HeatState => {
  const { fastTimeConstantS, slowTimeConstantS } = stretch.model.network;
  const target = settledHeat(stretch.model, stretch.currentA);
  return {
    fast: target.fast + (stretch.heat.fast - target.fast) * Math.exp(-stretch.durationS / fastTimeConstantS),
    slow: target.slow + (stretch.heat.slow - target.slow) * Math.exp(-stretch.durationS / slowTimeConstantS),
  };
};

/**
 * The most heat during a stretch of constant current, in closed form: at its start, its end, or at the one inner
 * peak that comes when the fast node heats while the slow one cools.
 *
 * @param stretch.model      a solved inverter
 * @param stretch.heat       heat of both nodes at the start
 * @param stretch.currentA   r.m.s. output current [A], ≥ 0; null for off
 * @param stretch.durationS  length [s], ≥ 0
 * @returns heatRatio (1 = allowed at reference ambient) and atS [s] from the start of the stretch
 * @throws  nothing
 * Source:  derived
 * Example: peakHeat({ model: exampleModel, heat: { fast: 0, slow: 0.7 }, currentA: 12, durationS: 0 }).heatRatio → 0.7
 */
export const peakHeat = (stretch: HeatStretch): { heatRatio: number; atS: number } => {
  const { peak } = curveExtremes({ curve: heatCurve(stretch), durationS: stretch.durationS });
  return { heatRatio: peak.value, atS: peak.atS };
};
