import { type HeatState, heatAfter, type InverterModel, settledHeat } from '../../../engine/index.ts';
import { stopTimeS } from '../heat/stop-time.ts';

export interface Run {
  durationS: number;
  /** Heat left in both parts after the stop and the wait that follow this run. */
  heatAtRestart: HeatState;
}

/**
 * How long a unit runs before each of its first stops under a load that is never taken off, from no load at first and
 * switched on again after the fixed wait each time.
 *
 * @throws {RangeError} when the load does not stop the unit
 */
export function runsBetweenStops(model: InverterModel, currentA: number, stops: number): Run[] {
  const runs: Run[] = [];
  let heat = settledHeat(model, 0);
  for (let stop = 0; stop < stops; stop += 1) {
    const durationS = stopTimeS({ model, currentA, heat });
    const hot = heatAfter({ model, heat, currentA, durationS });
    heat = heatAfter({ model, heat: hot, currentA: null, durationS: model.datasheet.waitS });
    runs.push({ durationS, heatAtRestart: heat });
  }
  return runs;
}

/** The run with this number, 0 for the first. @throws {RangeError} when the load does not stop the unit */
export function runOf(model: InverterModel, currentA: number, run: number): Run {
  const found = runsBetweenStops(model, currentA, run + 1)[run];
  if (!found) throw new RangeError(`run: expected 0 or more, found ${run}`);
  return found;
}
