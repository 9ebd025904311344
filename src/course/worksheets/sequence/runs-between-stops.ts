import { heatAfter, type InverterModel, settledHeat } from '../../../engine/index.ts';
import { stopTimeOrNull, stopTimeS } from '../heat/stop-time.ts';

/**
 * How long a unit runs before each of its first stops under a load that is never taken off, warm from no load at first and
 * switched on again after the fixed wait each time.
 *
 * @throws {RangeError} when the load does not stop the unit
 */
export function runsBetweenStops(model: InverterModel, currentA: number, stops: number): number[] {
  const runsS: number[] = [];
  let heat = settledHeat(model, 0);
  for (let stop = 0; stop < stops; stop += 1) {
    const durationS = stopTimeS({ model, currentA, heat });
    runsS.push(durationS);
    const hot = heatAfter({ model, heat, currentA, durationS });
    heat = heatAfter({ model, heat: hot, currentA: null, durationS: model.datasheet.waitS });
  }
  return runsS;
}

/** The run with this number (0 is the first) by load current; null where the load does not stop the unit. */
export const runCurve = (model: InverterModel, run: number) => (currentA: number) =>
  stopTimeOrNull({ model, currentA }) === null
    ? null
    : (runsBetweenStops(model, currentA, run + 1)[run] ?? null);
