import {
  dutyHeat,
  heatAfter,
  heatTarget,
  type InverterModel,
  rmsOfSegments,
  settledHeat,
} from '../../../engine/index.ts';
import { areApart } from '../are-apart.ts';
import type { Formula } from '../formula.ts';
import { difference, fraction, product, sum } from '../formula.ts';
import { stillToGo } from './heat-formula.ts';

/** A busy part and a rest, repeated for ever. */
export interface RepeatingCycle {
  inverter: InverterModel;
  busyA: number;
  busyS: number;
  restA: number;
  restS: number;
}

export const rmsOfCycle = ({ busyA, busyS, restA, restS }: RepeatingCycle): number =>
  rmsOfSegments([
    { from: busyA, durationS: busyS },
    { from: restA, durationS: restS },
  ]);

/** Heat at the end of the first busy part, started warm from no load. */
export function firstPeak({ inverter, busyA, busyS }: RepeatingCycle): number {
  const start = settledHeat(inverter, 0);
  const heat = heatAfter({ model: inverter, heat: start, currentA: busyA, durationS: busyS });
  return heat.fast + heat.slow;
}

/** How far a part gets within a settled cycle, of the way from the rest's demand to the busy part's. */
export const reachRatio = (timeConstantS: number, { busyS, restS }: RepeatingCycle): number =>
  Math.expm1(-busyS / timeConstantS) / Math.expm1(-(busyS + restS) / timeConstantS);

export const cycleTime = sum('busyS', 'restS');

const risen = (time: Formula | string, timeConstant: string): Formula =>
  difference(1, stillToGo(time, timeConstant));

export const reachFormula = (timeConstant: string): Formula =>
  fraction(risen('busyS', timeConstant), risen(cycleTime, timeConstant));

/** Settled peak of one part. Both together are the `peakHeatRatio` of `dutyHeat`: a test holds it. */
export const partPeak = (given: {
  shareRatio: number;
  reach: number;
  busyDemandRatio: number;
  restDemandRatio: number;
}): number =>
  given.shareRatio * (given.restDemandRatio + (given.busyDemandRatio - given.restDemandRatio) * given.reach);

export const partPeakFormula = (share: Formula | string, reach: string): Formula =>
  product(share, sum('restDemandRatio', product(difference('busyDemandRatio', 'restDemandRatio'), reach)));

/** Whether the cycle overloads the unit at times, is no borderline case, and lets the slips be told from each other. */
export function isTellingCycle(cycle: RepeatingCycle): boolean {
  const { inverter, busyA, busyS, restA, restS } = cycle;
  const { peakHeatRatio, meanHeatRatio } = dutyHeat({
    model: inverter,
    segments: [
      { currentA: busyA, durationS: busyS },
      { currentA: restA, durationS: restS },
    ],
  });
  const apart = (left: number, right: number): boolean => areApart([left, right], 0.04);
  const byTime = (busy: number, rest: number): number => (busy * busyS + rest * restS) / (busyS + restS);
  const busyDemand = heatTarget(inverter, busyA);
  const restDemand = heatTarget(inverter, restA);
  const { fastShareRatio, fastTimeConstantS } = inverter.network;
  const smallPeak = partPeak({
    shareRatio: fastShareRatio,
    reach: reachRatio(fastTimeConstantS, cycle),
    busyDemandRatio: busyDemand,
    restDemandRatio: restDemand,
  });
  const wrongMeans = [(busyDemand + restDemand) / 2, byTime(busyDemand, 0), byTime(restDemand, busyDemand)];
  return (
    busyA > inverter.continuousA * 1.05 &&
    busyA < inverter.limitA * 0.98 &&
    restA < inverter.continuousA * 0.8 &&
    apart(peakHeatRatio, 1) &&
    // Taking the big part at its mean, as one does by hand, must lead inside the tolerance.
    Math.abs((smallPeak + (1 - fastShareRatio) * meanHeatRatio) / peakHeatRatio - 1) < 0.015 &&
    apart(peakHeatRatio, inverter.datasheet.warnAtHeatRatio) &&
    apart(firstPeak(cycle), 1) &&
    apart(rmsOfCycle(cycle), inverter.continuousA) &&
    areApart([restDemand, restA / inverter.continuousA], 0.025) &&
    areApart([meanHeatRatio, busyDemand, ...wrongMeans], 0.025) &&
    areApart([peakHeatRatio, meanHeatRatio, firstPeak(cycle), busyDemand, smallPeak], 0.025) &&
    areApart([rmsOfCycle(cycle), byTime(busyA, restA), Math.hypot(busyA, restA) / Math.SQRT2, busyA], 0.02)
  );
}
