import {
  dutyHeat,
  heatAfter,
  heatTarget,
  type InverterModel,
  rmsOfSegments,
  settledHeat,
} from '../../../engine/index.ts';
import type { Formula } from '../formula.ts';
import { difference, exp, fraction, product, sum } from '../formula.ts';
import { areApart } from './are-apart.ts';
import { fastShare, fastTime, slowShare, slowTime } from './heat-formula.ts';

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

/** Settled peak of one node, as a share of its swing between rest and busy demand. */
const peakShare = (timeConstantS: number, { busyS, restS }: RepeatingCycle): number =>
  Math.expm1(-busyS / timeConstantS) / Math.expm1(-(busyS + restS) / timeConstantS);

/** The settled peak for demands that may be the learner's own. Equal to `dutyHeat` for the right ones: a test holds it. */
export function settledPeak(
  cycle: RepeatingCycle & { busyDemandRatio: number; restDemandRatio: number },
): number {
  const { fastShareRatio, fastTimeConstantS, slowTimeConstantS } = cycle.inverter.network;
  const share =
    fastShareRatio * peakShare(fastTimeConstantS, cycle) +
    (1 - fastShareRatio) * peakShare(slowTimeConstantS, cycle);
  return cycle.restDemandRatio + (cycle.busyDemandRatio - cycle.restDemandRatio) * share;
}

export const cycleTime = sum('busyS', 'restS');

const risen = (time: Formula | string, timeConstant: string): Formula =>
  difference(1, fraction(1, exp(fraction(time, timeConstant))));
const nodeShare = (timeConstant: string): Formula =>
  fraction(risen('busyS', timeConstant), risen(cycleTime, timeConstant));

export const settledPeakFormula = sum(
  'restDemandRatio',
  product(
    difference('busyDemandRatio', 'restDemandRatio'),
    sum(product(fastShare, nodeShare(fastTime)), product(slowShare, nodeShare(slowTime))),
  ),
);

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
  const wrongMeans = [(busyDemand + restDemand) / 2, byTime(busyDemand, 0), byTime(restDemand, busyDemand)];
  return (
    busyA > inverter.continuousA * 1.05 &&
    busyA < inverter.limitA * 0.98 &&
    restA < inverter.continuousA * 0.8 &&
    apart(peakHeatRatio, 1) &&
    apart(peakHeatRatio, inverter.datasheet.warnAtHeatRatio) &&
    apart(firstPeak(cycle), 1) &&
    apart(rmsOfCycle(cycle), inverter.continuousA) &&
    areApart([restDemand, restA / inverter.continuousA], 0.025) &&
    areApart([meanHeatRatio, busyDemand, ...wrongMeans], 0.025) &&
    areApart([peakHeatRatio, meanHeatRatio, firstPeak(cycle), busyDemand], 0.03) &&
    areApart([rmsOfCycle(cycle), byTime(busyA, restA), Math.hypot(busyA, restA) / Math.SQRT2, busyA], 0.02)
  );
}
