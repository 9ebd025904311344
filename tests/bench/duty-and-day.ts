import {
  dutyHeat,
  exampleModel,
  heatAfter,
  settledHeat,
  simulateSystem,
  timeToStop,
  type ZipLoad,
} from '../../src/engine/index.ts';
import { medianNs, printFigure } from './measure.ts';

const segments = [
  { durationS: 240, currentA: exampleModel.longDurationA },
  { durationS: 600, currentA: 0.4 * exampleModel.continuousA },
  { durationS: 360, currentA: 0 },
];

/** The plain way: repeat the cycle until nothing moves any more. */
function repeatUntilSettled(): number {
  let heat = settledHeat(exampleModel, 0);
  for (;;) {
    const before = heat;
    for (const { durationS, currentA } of segments)
      heat = heatAfter({ model: exampleModel, heat, currentA, durationS });
    if (Math.abs(heat.fast - before.fast) + Math.abs(heat.slow - before.slow) < 1e-12)
      return heat.fast + heat.slow;
  }
}

const DAY_EVENTS = 2000;
const nothing = { realW: 0, reactiveVar: 0 };

/** A day of 2 000 load changes on one unit, now and then above its ratings. Invented. */
function dayOfLoads(): { startS: number; load: ZipLoad }[] {
  const largestVa = exampleModel.surgeA * exampleModel.datasheet.acNominalV;
  return Array.from({ length: DAY_EVENTS }, (_, place) => ({
    startS: (place * 86_400) / DAY_EVENTS,
    load: {
      impedance: {
        realW: largestVa * ((place * 7) % 11) * 0.05,
        reactiveVar: largestVa * ((place * 3) % 5) * 0.04,
      },
      current: nothing,
      power: { realW: largestVa * ((place * 5) % 7) * 0.03, reactiveVar: 0 },
    },
  }));
}

export function dutyAndDay(): void {
  printFigure({
    name: 'Repeating duty in closed form',
    ns: medianNs(() => dutyHeat({ model: exampleModel, segments }), 2000),
    reference: { name: 'repeating until settled', ns: medianNs(repeatUntilSettled, 20) },
  });
  const loads = dayOfLoads();
  const day = (): number =>
    simulateSystem({
      units: [{ id: 'one', phase: 'L1', model: exampleModel, ambientC: 25, loads }],
      untilS: 86_400,
    }).events.length;
  printFigure({
    name: `A site day of ${DAY_EVENTS} events`,
    ns: medianNs(day, 10),
    per: { name: 'an event', count: DAY_EVENTS },
  });
  const currentA = 1.3 * exampleModel.continuousA;
  printFigure({
    name: 'Time to stop',
    ns: medianNs(() => timeToStop({ model: exampleModel, currentA, ambientC: 35 }).timeS, 5000),
  });
}
