import { exampleModel, heatTarget, historyHeat, settledHeat } from '../../src/engine/index.ts';
import { medianNs, printFigure } from './measure.ts';

const EVENTS = 75_000;
const YEAR_S = 365 * 24 * 3600;

/** A year of switching: stretches of seconds to an hour, loads from nothing to the surge rating. Invented. */
function yearOfLoad(): { durationsS: Float64Array; currentsA: Float64Array } {
  let state = 12345;
  const random = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const raw = Float64Array.from({ length: EVENTS }, () => 5 + 3600 * random() ** 4);
  const scale = YEAR_S / raw.reduce((total, one) => total + one, 0);
  return {
    durationsS: raw.map((one) => Math.max(1, Math.round(one * scale))),
    currentsA: Float64Array.from({ length: EVENTS }, () => exampleModel.surgeA * random() ** 2),
  };
}

/** The plain way: every second of the year is a step. */
function denseLoop(durationsS: Float64Array, currentsA: Float64Array): number {
  const { fastTimeConstantS, slowTimeConstantS, fastShareRatio } = exampleModel.network;
  const fastKeep = Math.exp(-1 / fastTimeConstantS);
  const slowKeep = Math.exp(-1 / slowTimeConstantS);
  let { fast, slow } = settledHeat(exampleModel, 0);
  let peak = 0;
  for (let event = 0; event < durationsS.length; event += 1) {
    const target = heatTarget(exampleModel, currentsA[event] ?? 0);
    const [fastTarget, slowTarget] = [fastShareRatio * target, (1 - fastShareRatio) * target];
    const seconds = durationsS[event] ?? 0;
    for (let second = 0; second < seconds; second += 1) {
      fast = fastTarget + (fast - fastTarget) * fastKeep;
      slow = slowTarget + (slow - slowTarget) * slowKeep;
      if (fast + slow > peak) peak = fast + slow;
    }
  }
  return peak;
}

export function yearOfHeat(): void {
  const { durationsS, currentsA } = yearOfLoad();
  const ns = medianNs(() => historyHeat({ model: exampleModel, durationsS, currentsA }).peakHeatRatio, 5);
  const dense = medianNs(() => denseLoop(durationsS, currentsA), 1, 5);
  printFigure({
    name: `Heat over a year, ${EVENTS} events with exact inner peaks`,
    ns,
    per: { name: 'an event', count: EVENTS },
    reference: { name: 'dense 1-second loop', ns: dense },
  });
}
