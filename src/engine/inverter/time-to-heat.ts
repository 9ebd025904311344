import { allowedHeat, type Surroundings } from './allowed-heat.ts';
import { heatCurve, settledHeat } from './heat-target.ts';
import type { HeatState, InverterModel } from './model.ts';
import { timeToRise } from './thermal/time-to-rise.ts';

/**
 * When the heat first rises through a level under a constant current.
 *
 * @param given.model       a solved inverter
 * @param given.heat        heat of both nodes now
 * @param given.currentA    r.m.s. output current [A], ≥ 0; null for off
 * @param given.levelRatio  heat to be passed (1 = allowed at reference ambient)
 * @returns time [s]; 0 when already above, or on it and rising; null when it never goes above
 * @throws  nothing
 * Source:  derived
 * Example: timeToHeat({ model: exampleModel, heat: settledHeat(exampleModel, 0), currentA: 15, levelRatio: 1 }) → 1800
 */
export const timeToHeat = (given: {
  model: InverterModel;
  heat: HeatState;
  currentA: number | null;
  levelRatio: number;
}): number | null => timeToRise({ curve: heatCurve(given), level: given.levelRatio });

/**
 * How long the unit carries a constant current before its heat stops it: the inverse-time curve.
 *
 * @param given.model      a solved inverter
 * @param given.currentA   r.m.s. output current [A], ≥ 0
 * @param given.ambientC   air around the unit [°C]
 * @param given.altitudeM  height of the site [m], ≥ 0, default 0
 * @param given.heat       heat of both nodes at the start; default: settled at no load
 * @returns timeS [s]; null when it runs for ever; 0 when it is too hot to start with
 * @throws  {RangeError} as `allowedHeat`
 * Valid for: heat alone; above the current limit the voltage gives way first (`overloadLevel`)
 * Source:  derived
 * Example: timeToStop({ model: exampleModel, currentA: 24, ambientC: 25 }).timeS → 60
 */
export const timeToStop = (
  given: Surroundings & { readonly currentA: number; readonly heat?: HeatState },
): { timeS: number | null } => {
  const { model, currentA, heat = settledHeat(model, 0) } = given;
  return { timeS: timeToHeat({ model, heat, currentA, levelRatio: allowedHeat(given) }) };
};
