import { settledHeat } from './heat-target.ts';
import type { HeatState, InverterModel } from './model.ts';
import { timeToRise } from './thermal/time-to-rise.ts';

/** What a history of load did to the unit. Times [s] from the start of the history. */
export interface HistoryHeat {
  readonly heat: HeatState;
  readonly peakHeatRatio: number;
  readonly peakAtS: number;
  readonly firstWarningS: number | null;
  readonly firstStopS: number | null;
}

/**
 * Runs the heat network through a piecewise-constant history of current, event by event: two exponentials a
 * stretch, inner peaks exact, nothing stored per second. The history is taken as it is: nothing stops the unit
 * (for that, `simulateSystem`).
 *
 * @param history.model              a solved inverter
 * @param history.durationsS         length of each stretch [s], ≥ 0
 * @param history.currentsA          r.m.s. output current of each stretch [A]; negative or NaN means off
 * @param history.heat               heat at the start; default: settled at no load
 * @param history.allowedHeatRatio   heat at which it would stop (`allowedHeat`); default 1
 * @returns heat at the end, peak and when, first rise through the warning level and through the allowed heat, or null
 * @throws  {RangeError} the two arrays differ in length
 * Source:  foster-notebook; derived (inner peak)
 * Example: historyHeat({ model: exampleModel, durationsS: Float64Array.of(600, 600), currentsA: Float64Array.of(24, -1) }).firstStopS → 60
 */
export const historyHeat = (history: {
  model: InverterModel;
  durationsS: Float64Array;
  currentsA: Float64Array;
  heat?: HeatState;
  allowedHeatRatio?: number;
}): HistoryHeat => {
  const { model, durationsS, currentsA, heat = settledHeat(model, 0), allowedHeatRatio = 1 } = history;
  const count = durationsS.length;
  if (currentsA.length !== count) {
    throw new RangeError(`currentsA: expected ${count} values as in durationsS, found ${currentsA.length}`);
  }
  const { fastTimeConstantS, slowTimeConstantS, fastShareRatio } = model.network;
  const fastRate = 1 / fastTimeConstantS;
  const slowRate = 1 / slowTimeConstantS;
  const turnScale = 1 / (fastRate - slowRate);
  const turnShare = 1 - fastTimeConstantS * slowRate;
  const a = model.losses.constantW / model.continuousLossW;
  const b = model.losses.linearWPerA / model.continuousLossW;
  const c = model.losses.squareWPerA2 / model.continuousLossW;
  const warningLevel = model.datasheet.warnAtHeatRatio * allowedHeatRatio;

  let { fast, slow } = heat;
  let clockS = 0;
  let peak = fast + slow;
  let peakAtS = 0;
  let firstWarningS: number | null = null;
  let firstStopS: number | null = null;
  let watched = warningLevel;
  for (let i = 0; i < count; i++) {
    const durationS = durationsS[i] as number;
    const currentA = currentsA[i] as number;
    const target = currentA >= 0 ? a + currentA * (b + currentA * c) : 0;
    const fastTarget = fastShareRatio * target;
    const fastPart = fast - fastTarget;
    const slowPart = slow - (target - fastTarget);
    const fastLeft = fastPart * Math.exp(-durationS * fastRate);
    const slowLeft = slowPart * Math.exp(-durationS * slowRate);
    const end = target + fastLeft + slowLeft;
    let top = end;
    let topAtS = durationS;
    // An inner peak: fast node heating, slow one cooling, rising at first and falling at the end. It stays below
    // target + slowPart, so most need no logarithm.
    if (
      target + slowPart > peak &&
      fastPart < 0 &&
      slowPart > 0 &&
      fastPart * fastRate + slowPart * slowRate < 0 &&
      fastLeft * fastRate + slowLeft * slowRate > 0
    ) {
      topAtS = Math.log(-(fastPart * fastRate) / (slowPart * slowRate)) * turnScale;
      top = target + slowPart * Math.exp(-topAtS * slowRate) * turnShare;
    }
    if (top > peak) {
      peak = top;
      peakAtS = clockS + topAtS;
    }
    while (firstStopS === null && (top > watched || fast + slow > watched)) {
      const inS = timeToRise({
        curve: { steady: target, fastPart, slowPart, fastTimeConstantS, slowTimeConstantS },
        level: watched,
      });
      if (inS === null || inS > durationS) break;
      if (firstWarningS === null) {
        firstWarningS = clockS + inS;
        watched = allowedHeatRatio;
      } else firstStopS = clockS + inS;
    }
    fast = fastTarget + fastLeft;
    slow = target - fastTarget + slowLeft;
    clockS += durationS;
  }
  return { heat: { fast, slow }, peakHeatRatio: peak, peakAtS, firstWarningS, firstStopS };
};
