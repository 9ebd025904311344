import { bracketedRoot } from './bracketed-root.ts';
import { datasheetError } from './datasheet-error.ts';
import type { HeatNetwork } from './model.ts';

/** A rating for a time: where its current would settle (1 = continuous rating) and how long it is allowed. */
export interface TimedHeat {
  readonly heatRatio: number;
  readonly durationS: number;
}

/**
 * Fits the fast node (share and time constant) so that both timed ratings, started from running at no load, reach
 * the heat allowed exactly at the end of their time. The slow time constant is given.
 *
 * Each point fixes what must be left of the step at its time, q = (u − 1) / (u − h0). For a trial fast time constant
 * the long point gives the share; the surge point then remains to be met. What is left at the surge's time rises
 * steadily with the trial value, from q_long·e^((t_long − t_surge)/τ2) (a fast node that acts at once) to
 * q_long^(t_surge/t_long) (no slow node), so there is one solution when the surge lies between these two, else none.
 *
 * @param given.idleHeatRatio      heat settled at no load (0–1)
 * @param given.longDuration       heat it would settle at (> 1), time [s]
 * @param given.surge              heat it would settle at (> that), time [s]
 * @param given.slowTimeConstantS  time constant of the heat sink [s]
 * @param given.describeHeat       words for a settled heat in the author's unit, for the error
 * @returns share of the fast node (0–1) and both time constants [s]
 * @throws  {RangeError} no network satisfies the points: names the point, the band that would do, and what to change
 * Source:  derived
 * Example: fitHeatNetwork({ idleHeatRatio: 0, longDuration: { heatRatio: 1.5, durationS: 1800 }, surge: { heatRatio: 3, durationS: 60 }, slowTimeConstantS: 3600, describeHeat: String }).fastShareRatio → 0.4504
 */
export const fitHeatNetwork = (given: {
  idleHeatRatio: number;
  longDuration: TimedHeat;
  surge: TimedHeat;
  slowTimeConstantS: number;
  describeHeat: (heatRatio: number) => string;
}): HeatNetwork => {
  const { longDuration, surge, slowTimeConstantS, idleHeatRatio } = given;
  const leftOf = (point: TimedHeat): number => (point.heatRatio - 1) / (point.heatRatio - idleHeatRatio);
  const longLeft = leftOf(longDuration);
  const surgeLeft = leftOf(surge);
  checkTimes(given);

  const slowLong = Math.exp(-longDuration.durationS / slowTimeConstantS);
  const slowSurge = Math.exp(-surge.durationS / slowTimeConstantS);
  if (!(slowLong > longLeft)) {
    const longestS = -slowTimeConstantS * Math.log(longLeft);
    throw datasheetError({
      field: 'longDuration.power',
      expected: `a rating that lasts less than the ${longestS.toPrecision(4)} s of the heat sink alone`,
      found: `${longDuration.durationS} s`,
      change: 'lower longDuration.power or longDuration.durationS, or raise heatSinkTimeConstantS',
    });
  }
  const leftBand = {
    from: (longLeft * slowSurge) / slowLong,
    upTo: longLeft ** (surge.durationS / longDuration.durationS),
  };
  const heatForLeft = (left: number): number => (1 - left * idleHeatRatio) / (1 - left);
  const refuseSurge = (why: 'low' | 'high'): RangeError =>
    datasheetError({
      field: 'surge.power',
      expected: `between ${given.describeHeat(heatForLeft(leftBand.from))} and ${given.describeHeat(heatForLeft(leftBand.upTo))} for ${surge.durationS} s, beside this long-duration rating`,
      found: given.describeHeat(surge.heatRatio),
      change:
        why === 'low'
          ? 'raise surge.power or surge.durationS, lower longDuration.power, or raise heatSinkTimeConstantS'
          : 'lower surge.power or surge.durationS, or raise longDuration.power',
    });
  if (!(surgeLeft < leftBand.upTo)) throw refuseSurge('high');

  const shareFor = (fastS: number): number =>
    (slowLong - longLeft) / (slowLong - Math.exp(-longDuration.durationS / fastS));
  const surgeExcess = (logFastS: number): number => {
    const fastS = Math.exp(logFastS);
    const share = shareFor(fastS);
    return share * Math.exp(-surge.durationS / fastS) + (1 - share) * slowSurge - surgeLeft;
  };
  const lower = Math.log(surge.durationS / 700);
  const upper = Math.log(-longDuration.durationS / Math.log(longLeft));
  if (!(surgeExcess(lower) < 0)) throw refuseSurge('low');
  const fastTimeConstantS = Math.exp(bracketedRoot({ lower, upper, valueAt: surgeExcess }));
  return { fastShareRatio: shareFor(fastTimeConstantS), fastTimeConstantS, slowTimeConstantS };
};

const checkTimes = ({ longDuration, surge }: { longDuration: TimedHeat; surge: TimedHeat }): void => {
  if (surge.durationS < longDuration.durationS) return;
  throw datasheetError({
    field: 'surge.durationS',
    expected: `less than longDuration.durationS (${longDuration.durationS} s)`,
    found: `${surge.durationS} s`,
    change: 'lower surge.durationS or raise longDuration.durationS',
  });
};
