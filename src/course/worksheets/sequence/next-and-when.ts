import { type InverterModel, settledHeat, timeToHeat } from '../../../engine/index.ts';
import { sum } from '../formula.ts';
import { areApart } from '../heat/are-apart.ts';
import { heatQuantities, stopTimeEquation } from '../heat/heat-formula.ts';
import { perModel } from '../heat/per-model.ts';
import { readsWell, tableLoads } from '../heat/printed-curve.ts';
import { stopTimeS } from '../heat/stop-time.ts';
import { defineWorksheet } from '../worksheet.ts';
import { runCurve, runsBetweenStops } from './runs-between-stops.ts';
import { stopEquation } from './stop-equation.ts';

interface Values {
  inverter: InverterModel;
  loadA: number;
  order: readonly string[];
  firstStopS: number;
  restartS: number;
  secondStopS: number;
  clearsAtS: number;
  lockoutStop: string;
  lockoutS: number;
}

/** The tolerance of the stop times, and a little. */
const CLEAR_GAP_S = 6;

const runNumbers = [0, 1, 2] as const;

const rowsOf = perModel((inverter) =>
  tableLoads(
    runNumbers.map((run) => runCurve(inverter, run)),
    { from: inverter.continuousA * 1.05, to: inverter.limitA, widest: inverter.continuousA / 8 },
  ),
);

const runOf = ({ inverter, loadA }: Pick<Values, 'inverter' | 'loadA'>, run: number): number => {
  const durationS = runsBetweenStops(inverter, loadA, run + 1)[run];
  if (durationS === undefined) throw new RangeError(`run: expected 0 or more, found ${run}`);
  return durationS;
};

/** When the unit warns for the first time. */
const warningS = ({ inverter, loadA }: Pick<Values, 'inverter' | 'loadA'>): number | null =>
  timeToHeat({
    model: inverter,
    heat: settledHeat(inverter, 0),
    currentA: loadA,
    levelRatio: inverter.datasheet.warnAtHeatRatio,
  });

const wait = 'inverter.datasheet.waitS';
const reclaim = 'inverter.datasheet.reclaimS';
const rightOrder = ['warning', 'stop', 'wait', 'restart', 'stop-again', 'lockout', 'manual-reset'] as const;

export const nextAndWhen = defineWorksheet<Values>({
  id: 'next-and-when',
  unit: 2,
  givens: {
    inverter: { kind: 'inverter' },
    loadA: { kind: 'number', dimension: 'current', from: 1, to: 500 },
  },
  quantities: {
    ...heatQuantities,
    [wait]: { symbol: 't_wait', dimension: 'time' },
    [reclaim]: { symbol: 't_reclaim', dimension: 'time' },
    loadA: { symbol: 'I', dimension: 'current', unit: 'A' },
    firstStopS: { symbol: 't_1', dimension: 'time' },
    restartS: { symbol: 't_on', dimension: 'time' },
    secondStopS: { symbol: 't_2', dimension: 'time' },
    clearsAtS: { symbol: 't_clear', dimension: 'time' },
    lockoutS: { symbol: 't_lock', dimension: 'time' },
  },
  // The lockout step follows three runs: units that lock out at their third stop.
  accepts: ({ inverter, loadA }) => {
    const { datasheet, continuousA, limitA } = inverter;
    if (datasheet.stopsToLockout !== 3 || loadA < continuousA * 1.06 || loadA > limitA * 0.98) return false;
    const { waitS, reclaimS, surge, longDuration } = datasheet;
    const [first = 0, second = 0, third = 0, fourth = 0] = runsBetweenStops(inverter, loadA, 4);
    const rows = rowsOf(inverter);
    return (
      second < reclaimS &&
      // Far enough apart for the slips to be told from each other and from the key.
      [second - waitS, third - waitS, first - waitS - third - fourth].every(
        (gap) => Math.abs(gap) > CLEAR_GAP_S,
      ) &&
      Math.abs(first - (warningS({ inverter, loadA }) ?? 0) - waitS) > 3 &&
      areApart([first, second, surge.durationS, longDuration.durationS], 0.07) &&
      runNumbers.every((run) => readsWell(runCurve(inverter, run), rows, loadA))
    );
  },
  tables: ({ inverter }) => [
    {
      id: 'runs',
      columns: [
        { id: 'currentA', dimension: 'current' },
        { id: 'firstRunS', dimension: 'time' },
        { id: 'secondRunS', dimension: 'time' },
        { id: 'thirdRunS', dimension: 'time' },
      ],
      rows: rowsOf(inverter).map((currentA) => [
        currentA,
        ...runNumbers.map((run) => runCurve(inverter, run)(currentA)),
      ]),
    },
  ],
  steps: [
    {
      kind: 'ordering',
      id: 'order',
      needs: [],
      options: ['lockout', 'manual-reset', 'restart', 'stop', 'stop-again', 'wait', 'warning'],
      solve: () => rightOrder,
      source: 'common-practice',
      slips: [
        {
          id: 'reset-by-hand-first',
          solve: () => ['warning', 'stop', 'wait', 'manual-reset', 'restart', 'stop-again', 'lockout'],
        },
        {
          id: 'lockout-at-first-stop',
          solve: () => ['warning', 'stop', 'lockout', 'wait', 'restart', 'stop-again', 'manual-reset'],
        },
        {
          id: 'warning-with-the-stop',
          solve: () => ['stop', 'warning', 'wait', 'restart', 'stop-again', 'lockout', 'manual-reset'],
        },
        {
          id: 'restart-before-wait',
          solve: () => ['warning', 'stop', 'restart', 'wait', 'stop-again', 'lockout', 'manual-reset'],
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'firstStopS',
      needs: ['inverter', 'loadA'],
      solve: ({ inverter, loadA }) => stopTimeS({ model: inverter, currentA: loadA }),
      formula: stopTimeEquation({ current: 'loadA', time: 'firstStopS' }),
      tolerance: { relative: 0.06 },
      source: 'derived',
      slips: [
        { id: 'second-run', solve: (values) => runOf(values, 1) },
        { id: 'long-duration-time', solve: ({ inverter }) => inverter.datasheet.longDuration.durationS },
        { id: 'surge-time', solve: ({ inverter }) => inverter.datasheet.surge.durationS },
      ],
    },
    {
      kind: 'numeric',
      id: 'restartS',
      needs: ['inverter', 'loadA', 'firstStopS'],
      solve: ({ inverter, firstStopS }) => firstStopS + inverter.datasheet.waitS,
      formula: sum('firstStopS', wait),
      tolerance: { absolute: 1 },
      source: 'invented-data',
      slips: [
        {
          id: 'wait-from-warning',
          solve: (values) => {
            const timeS = warningS(values);
            return timeS === null ? null : timeS + values.inverter.datasheet.waitS;
          },
        },
        { id: 'no-wait', solve: ({ firstStopS }) => firstStopS },
        {
          id: 'reclaim-for-wait',
          solve: ({ inverter, firstStopS }) => firstStopS + inverter.datasheet.reclaimS,
        },
        { id: 'first-stop-left-out', solve: ({ inverter }) => inverter.datasheet.waitS },
      ],
    },
    {
      kind: 'numeric',
      id: 'secondStopS',
      needs: ['inverter', 'loadA', 'firstStopS', 'restartS'],
      solve: (values) => values.restartS + runOf(values, 1),
      formula: stopEquation('secondStopS', [sum('restartS')], [sum('firstStopS')]),
      tolerance: { absolute: 5 },
      source: 'derived',
      slips: [
        { id: 'cooled-down-again', solve: ({ firstStopS, restartS }) => restartS + firstStopS },
        { id: 'wait-forgotten', solve: (values) => values.firstStopS + runOf(values, 1) },
        { id: 'stops-at-once', solve: ({ restartS }) => restartS },
        { id: 'run-only', solve: (values) => runOf(values, 1) },
      ],
    },
    {
      kind: 'numeric',
      id: 'clearsAtS',
      needs: ['inverter', 'firstStopS', 'restartS'],
      solve: ({ inverter, restartS }) => restartS + inverter.datasheet.reclaimS,
      formula: sum('restartS', reclaim),
      tolerance: { absolute: 1 },
      source: 'invented-data',
      slips: [
        {
          id: 'from-the-stop',
          solve: ({ inverter, firstStopS }) => firstStopS + inverter.datasheet.reclaimS,
        },
        { id: 'from-the-start', solve: ({ inverter }) => inverter.datasheet.reclaimS },
        { id: 'wait-for-reclaim', solve: ({ inverter, restartS }) => restartS + inverter.datasheet.waitS },
      ],
    },
    {
      kind: 'choice',
      id: 'lockoutStop',
      needs: ['inverter', 'secondStopS', 'clearsAtS'],
      options: ['first', 'second', 'third', 'fourth', 'never'],
      solve: ({ secondStopS, clearsAtS }) => (secondStopS < clearsAtS ? 'third' : 'never'),
      source: 'invented-data',
      slips: [
        { id: 'at-the-first', solve: () => 'first' },
        { id: 'one-stop-early', solve: () => 'second' },
        { id: 'one-stop-late', solve: () => 'fourth' },
        { id: 'restarts-for-ever', solve: () => 'never' },
      ],
    },
    {
      kind: 'numeric',
      id: 'lockoutS',
      needs: ['inverter', 'loadA', 'firstStopS', 'restartS', 'secondStopS'],
      solve: (values) => values.secondStopS + values.inverter.datasheet.waitS + runOf(values, 2),
      formula: stopEquation(
        'lockoutS',
        [sum('restartS'), sum('secondStopS', wait)],
        [sum('firstStopS'), sum('secondStopS')],
      ),
      tolerance: { absolute: 5 },
      source: 'derived',
      slips: [
        { id: 'one-stop-early', solve: ({ secondStopS }) => secondStopS },
        {
          id: 'one-stop-late',
          solve: (values) =>
            values.secondStopS + 2 * values.inverter.datasheet.waitS + runOf(values, 2) + runOf(values, 3),
        },
        {
          id: 'at-third-restart',
          solve: ({ inverter, secondStopS }) => secondStopS + inverter.datasheet.waitS,
        },
        { id: 'second-wait-forgotten', solve: (values) => values.secondStopS + runOf(values, 2) },
        {
          id: 'whole-run-each-time',
          solve: ({ inverter, firstStopS, secondStopS }) =>
            secondStopS + inverter.datasheet.waitS + firstStopS,
        },
      ],
    },
  ],
});
