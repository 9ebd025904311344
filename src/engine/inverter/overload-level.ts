import { continuousCurrentA, type Surroundings } from './allowed-heat.ts';
import { currentForTime } from './current-for-time.ts';

/** none: for ever · heat: minutes to hours · surge: seconds to minutes · voltage-lost: a fraction of a second. */
export type OverloadLevel = 'none' | 'heat' | 'surge' | 'voltage-lost';

/** A current on a rating is within it; only rounding may lie between. */
const within = (currentA: number, ratingA: number): boolean => currentA <= ratingA * (1 + 1e-9);

/**
 * How severe a demand is, in the trade's order. Both heat bounds move with the surroundings: the continuous rating,
 * and the current that lasts the datasheet's long-duration time from running at no load. The current limit does not.
 *
 * @param given.model      a solved inverter
 * @param given.demandA    current the loads would draw at nominal voltage [A], ≥ 0
 * @param given.ambientC   air around the unit [°C]
 * @param given.altitudeM  height of the site [m], ≥ 0, default 0
 * @returns none ≤ continuous < heat ≤ long-duration < surge ≤ limit < voltage-lost; a demand on a bound has the milder level
 * @throws  {RangeError} as `allowedHeat`
 * Source:  common-practice
 * Example: overloadLevel({ model: exampleModel, demandA: 14, ambientC: 25 }) → 'heat'
 */
export const overloadLevel = (given: Surroundings & { readonly demandA: number }): OverloadLevel => {
  const { model, demandA } = given;
  if (!within(demandA, model.limitA)) return 'voltage-lost';
  if (within(demandA, continuousCurrentA(given))) return 'none';
  const longDurationA = currentForTime({ ...given, timeS: model.datasheet.longDuration.durationS });
  return within(demandA, longDurationA) ? 'heat' : 'surge';
};
