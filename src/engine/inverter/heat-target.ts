import { currentForLossA, lossesW } from './losses.ts';
import type { HeatState, InverterModel } from './model.ts';
import type { TwoExponential } from './thermal/two-exponential.ts';

/**
 * The heat at which the unit would settle under a constant current: its loss as a share of the loss at the
 * continuous rating.
 *
 * @param model     a solved inverter
 * @param currentA  r.m.s. output current [A], ≥ 0; null when the unit is off
 * @returns heat, 1 at the continuous rating, 0 when off
 * @throws  nothing
 * Formula: u = (a + b·I + c·I²) / (a + b·Ic + c·Ic²)
 * Source:  common-practice
 * Example: heatTarget(exampleModel, exampleModel.continuousA) → 1
 */
export const heatTarget = (model: InverterModel, currentA: number | null): number =>
  lossesW(model.losses, currentA) / model.continuousLossW;

/**
 * The current that settles at a given heat: the inverse of `heatTarget`.
 *
 * @param model      a solved inverter
 * @param heatRatio  heat, 1 at the continuous rating
 * @returns current [A]; 0 when even no load settles at or above that heat
 * @throws  nothing
 * Source:  common-practice
 * Example: currentForHeatTargetA(exampleModel, 1) → 12.00
 */
export const currentForHeatTargetA = (model: InverterModel, heatRatio: number): number =>
  currentForLossA(model.losses, heatRatio * model.continuousLossW);

/**
 * Heat of both nodes after a long time at one current.
 *
 * @param model     a solved inverter
 * @param currentA  r.m.s. output current [A], ≥ 0; null for off
 * @returns heat of the fast and the slow node
 * @throws  nothing
 * Source:  foster-notebook
 * Example: settledHeat(exampleModel, null).fast → 0
 */
export const settledHeat = (model: InverterModel, currentA: number | null): HeatState => {
  const target = heatTarget(model, currentA);
  const fast = model.network.fastShareRatio * target;
  return { fast, slow: target - fast };
};

/**
 * How the summed heat goes on from a state under a constant current, as a curve of two exponentials.
 *
 * @param given.model     a solved inverter
 * @param given.heat      heat of both nodes now
 * @param given.currentA  r.m.s. output current [A], ≥ 0; null for off
 * @returns the curve: settled value, two parts, two time constants [s]
 * @throws  nothing
 * Source:  foster-notebook
 * Example: heatCurve({ model: exampleModel, heat: { fast: 0, slow: 0 }, currentA: 12 }).steady → 1
 */
export const heatCurve = (given: {
  model: InverterModel;
  heat: HeatState;
  currentA: number | null;
}): TwoExponential => {
  const { network } = given.model;
  const target = settledHeat(given.model, given.currentA);
  return {
    steady: target.fast + target.slow,
    fastPart: given.heat.fast - target.fast,
    slowPart: given.heat.slow - target.slow,
    fastTimeConstantS: network.fastTimeConstantS,
    slowTimeConstantS: network.slowTimeConstantS,
  };
};
