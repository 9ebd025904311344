import { type InverterModel, settledHeat, timeToHeat } from '../../../engine/index.ts';
import { areApart } from '../are-apart.ts';
import { stopTimeOrNull } from '../heat/stop-time.ts';
import { currentRows, liesBetweenRows, rowFor, timeBetweenRows } from '../heat/table-rows.ts';
import { runOf, runsBetweenStops } from './runs-between-stops.ts';

/** A unit under the load of one row of its table. */
interface RowOfUnit {
  inverter: InverterModel;
  rowA: number;
}

/** The tolerance of the stop times, and a little. */
const CLEAR_GAP_S = 4;

export const durationOf = ({ inverter, rowA }: RowOfUnit, run: number): number =>
  runOf(inverter, rowA, run).durationS;

export const firstRun = (inverter: InverterModel) => (currentA: number) =>
  stopTimeOrNull({ model: inverter, currentA });

/** When the unit warns for the first time. */
export const warningS = ({ inverter, rowA }: RowOfUnit): number | null =>
  timeToHeat({
    model: inverter,
    heat: settledHeat(inverter, 0),
    currentA: rowA,
    levelRatio: inverter.datasheet.warnAtHeatRatio,
  });

/** Whether the unit locks out on this load, and the slips can be told from each other and from the key. */
export function hasTellingRuns({ inverter, loadA }: { inverter: InverterModel; loadA: number }): boolean {
  const { stopsToLockout, waitS, reclaimS, surge, longDuration } = inverter.datasheet;
  const rows = currentRows(inverter);
  const rowA = rowFor(rows, loadA);
  // The worksheet follows three runs.
  if (stopsToLockout !== 3 || rowA === null || !liesBetweenRows(rows, loadA)) return false;
  const runs = runsBetweenStops(inverter, rowA, 4).map((run) => run.durationS);
  const [first = 0, second = 0, third = 0, fourth = 0] = runs;
  return (
    second < reclaimS &&
    // Far enough apart for the slips to be told from each other and from the key.
    [second - waitS, third - waitS, first - waitS - third - fourth, second, third].every(
      (gap) => Math.abs(gap) > CLEAR_GAP_S,
    ) &&
    Math.abs(first - (warningS({ inverter, rowA }) ?? 0) - waitS) > 3 &&
    areApart(
      [
        first,
        second,
        timeBetweenRows(firstRun(inverter), rows, loadA),
        surge.durationS,
        longDuration.durationS,
      ],
      0.035,
    )
  );
}
