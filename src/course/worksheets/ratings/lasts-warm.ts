import {
  allowedHeat,
  heatTarget,
  type InverterModel,
  settledHeat,
  timeToStop,
} from '../../../engine/index.ts';

/**
 * Ratings are stated from running at no load. This tells whether the unit also lasts through a peak with the heat of
 * the running load in it, with a tenth of the time to spare.
 */
export function lastsWarm(given: {
  model: InverterModel;
  ambientC: number;
  runningA: number;
  peakA: number;
  peakS: number;
}): boolean {
  const { model, ambientC, runningA, peakA, peakS } = given;
  if (heatTarget(model, runningA) > allowedHeat({ model, ambientC })) return false;
  const { timeS } = timeToStop({ model, currentA: peakA, ambientC, heat: settledHeat(model, runningA) });
  return timeS === null || timeS > 1.1 * peakS;
}
