import { lossesW } from './losses.ts';
import type { InverterModel } from './model.ts';

/**
 * Loss of the inverter at an output current.
 *
 * @param model     a solved inverter
 * @param currentA  r.m.s. output current [A], ≥ 0; null when the unit is off
 * @returns loss [W]; 0 when off
 * @throws  nothing
 * Source:  common-practice
 * Example: lossW(exampleModel, 12) → 240.0
 */
export const lossW = (model: InverterModel, currentA: number | null): number =>
  lossesW(model.losses, currentA);

/**
 * Power drawn from the DC side.
 *
 * @param given.model     a solved inverter
 * @param given.currentA  r.m.s. output current [A], ≥ 0; null when the unit is off
 * @param given.outputW   real power delivered [W], ≥ 0; 0 when off
 * @returns power [W]
 * @throws  nothing
 * Formula: input = output + losses
 * Source:  common-practice
 * Example: inputPowerW({ model: exampleModel, currentA: 12, outputW: 2760 }) → 3000
 */
export const inputPowerW = (given: {
  model: InverterModel;
  currentA: number | null;
  outputW: number;
}): number => given.outputW + lossW(given.model, given.currentA);
