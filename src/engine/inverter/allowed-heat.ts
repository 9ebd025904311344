import { altitudeRatio } from './altitude-ratio.ts';
import { currentForHeatTargetA, heatTarget } from './heat-target.ts';
import type { InverterModel } from './model.ts';

/** Where the unit stands. */
export interface Surroundings {
  readonly model: InverterModel;
  /** air around the unit [°C] */
  readonly ambientC: number;
  /** height of the site [m], 0 unless stated */
  readonly altitudeM?: number;
}

/**
 * The heat at which the unit stops itself in given surroundings: hotter air leaves less room below the internal
 * limit, thinner air takes less away.
 *
 * The two effects are multiplied. Convention of this course: a converter at 2000 m and 45 °C under "−1 % per 100 m
 * above 1000 m, −1 % per K above 40 °C" keeps 0.90 × 0.95 = 0.855 of its rating (added up: 0.85). Height is counted
 * as a lower allowed heat, so that at the reference ambient the continuous current falls by exactly the stated share.
 *
 * @param place.model      a solved inverter
 * @param place.ambientC   air around the unit [°C], finite
 * @param place.altitudeM  height of the site [m], ≥ 0, default 0
 * @returns heat; 1 at the reference ambient and low height, 0 when the air is as hot as the internal limit
 * @throws  {RangeError} higher than the datasheet allows, or no temperature
 * Formula: (limit − ambient) / (limit − reference) · u(r·Ic)
 * Source:  derived; drive-manual (TH-39: factors multiplied)
 * Example: allowedHeat({ model: exampleModel, ambientC: 25 }) → 1
 */
export const allowedHeat = (place: Surroundings): number => {
  const { model, ambientC, altitudeM = 0 } = place;
  if (!Number.isFinite(ambientC)) {
    throw new RangeError(`ambientC: expected a temperature in °C, found ${ambientC}`);
  }
  const { altitude, referenceAmbientC } = model.datasheet;
  const airRatio = Math.max(0, (model.limitC - ambientC) / (model.limitC - referenceAmbientC));
  const ratingRatio = altitudeRatio({ altitude, altitudeM });
  return ratingRatio === 1 ? airRatio : airRatio * heatTarget(model, ratingRatio * model.continuousA);
};

/**
 * The current the unit carries for ever in given surroundings.
 *
 * @param place.model      a solved inverter
 * @param place.ambientC   air around the unit [°C]
 * @param place.altitudeM  height of the site [m], ≥ 0, default 0
 * @returns current [A]; 0 when the unit stops itself even at no load. Not capped by the current limit.
 * @throws  {RangeError} as `allowedHeat`
 * Source:  derived
 * Example: continuousCurrentA({ model: exampleModel, ambientC: 40 }) → 10.43
 */
export const continuousCurrentA = (place: Surroundings): number =>
  currentForHeatTargetA(place.model, allowedHeat(place));
