import type { InverterModel } from '../../../engine/index.ts';
import { sum } from '../formula.ts';
import { demandStep, heatQuantities, stopTimeEquation, timeInSeconds } from '../heat/heat-formula.ts';
import { rowStep } from '../heat/row-step.ts';
import { stopTimeS } from '../heat/stop-time.ts';
import { currentRows, timeBetweenRows } from '../heat/table-rows.ts';
import { defineWorksheet } from '../worksheet.ts';
import { orderStep } from './order-step.ts';
import { runStep, toGoStep } from './restart-steps.ts';
import { runsBetweenStops } from './runs-between-stops.ts';
import { durationOf, firstRun, hasTellingRuns, warningS } from './telling-runs.ts';

interface Values {
  inverter: InverterModel;
  loadA: number;
  order: readonly string[];
  rowA: number;
  demandRatio: number;
  firstStopS: number;
  restartS: number;
  smallToGoRatio: number;
  bigToGoRatio: number;
  secondRunS: number;
  secondStopS: number;
  clearsAtS: number;
  lockoutStop: string;
  smallToGoAgainRatio: number;
  bigToGoAgainRatio: number;
  thirdRunS: number;
  lockoutS: number;
}

const wait = 'inverter.datasheet.waitS';
const reclaim = 'inverter.datasheet.reclaimS';
export const nextAndWhen = defineWorksheet<Values>({
  id: 'next-and-when',
  unit: 2,
  givens: {
    inverter: { kind: 'inverter' },
    loadA: { kind: 'number', dimension: 'current', from: 1, to: 500 },
  },
  quantities: {
    ...heatQuantities,
    [wait]: timeInSeconds('t_wait'),
    [reclaim]: timeInSeconds('t_reclaim'),
    loadA: { symbol: 'I', dimension: 'current', unit: 'A' },
    rowA: { symbol: 'I_row', dimension: 'current', unit: 'A', figures: 'as-is' },
    demandRatio: { symbol: 'u', dimension: 'ratio' },
    firstStopS: timeInSeconds('t_1'),
    restartS: timeInSeconds('t_on'),
    smallToGoRatio: { symbol: 'd_small1', dimension: 'ratio' },
    bigToGoRatio: { symbol: 'd_big1', dimension: 'ratio' },
    secondRunS: timeInSeconds('t_run2'),
    secondStopS: timeInSeconds('t_2'),
    clearsAtS: timeInSeconds('t_clear'),
    smallToGoAgainRatio: { symbol: 'd_small2', dimension: 'ratio' },
    bigToGoAgainRatio: { symbol: 'd_big2', dimension: 'ratio' },
    thirdRunS: timeInSeconds('t_run3'),
    lockoutS: timeInSeconds('t_lock'),
  },
  accepts: hasTellingRuns,
  datasheetLines: ['continuous', 'longDuration', 'surge', 'warning', 'wait', 'reclaim', 'lockout'],
  tables: ({ inverter }) => [
    {
      id: 'runs',
      columns: [
        { id: 'currentA', dimension: 'current' },
        { id: 'firstRunS', dimension: 'time' },
        { id: 'secondRunS', dimension: 'time' },
        { id: 'thirdRunS', dimension: 'time' },
      ],
      rows: currentRows(inverter).map((currentA) => [
        currentA,
        ...runsBetweenStops(inverter, currentA, 3).map((run) => run.durationS),
      ]),
    },
  ],
  steps: [
    orderStep<Values>(),
    rowStep<Values>({
      id: 'rowA',
      needs: ['inverter', 'loadA'],
      rows: ({ inverter }) => currentRows(inverter),
      load: ({ loadA }) => loadA,
      slips: [],
    }),
    demandStep<Values>({
      id: 'demandRatio',
      needs: ['inverter', 'rowA'],
      currentA: ({ rowA }) => rowA,
      current: 'rowA',
    }),
    {
      kind: 'numeric',
      id: 'firstStopS',
      needs: ['inverter', 'loadA', 'rowA', 'demandRatio'],
      solve: ({ inverter, rowA }) => stopTimeS({ model: inverter, currentA: rowA }),
      formula: stopTimeEquation({ demand: 'demandRatio', time: 'firstStopS' }),
      tolerance: { relative: 0.03 },
      source: 'derived',
      slips: [
        { id: 'second-run', solve: (values) => durationOf(values, 1) },
        {
          id: 'between-rows',
          solve: ({ inverter, loadA }) => timeBetweenRows(firstRun(inverter), currentRows(inverter), loadA),
        },
        { id: 'long-duration-time', solve: ({ inverter }) => inverter.datasheet.longDuration.durationS },
        { id: 'surge-time', solve: ({ inverter }) => inverter.datasheet.surge.durationS },
      ],
    },
    {
      kind: 'numeric',
      id: 'restartS',
      needs: ['inverter', 'rowA', 'firstStopS'],
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
    toGoStep<Values>({
      id: 'smallToGoRatio',
      part: 'fast',
      run: 0,
      runTime: 'firstStopS',
      needs: ['firstStopS'],
    }),
    toGoStep<Values>({
      id: 'bigToGoRatio',
      part: 'slow',
      run: 0,
      runTime: 'firstStopS',
      needs: ['firstStopS'],
    }),
    runStep<Values>({ id: 'secondRunS', run: 1, small: 'smallToGoRatio', big: 'bigToGoRatio' }),
    {
      kind: 'numeric',
      id: 'secondStopS',
      needs: ['firstStopS', 'restartS', 'secondRunS'],
      solve: ({ restartS, secondRunS }) => restartS + secondRunS,
      formula: sum('restartS', 'secondRunS'),
      tolerance: { absolute: 3 },
      source: 'derived',
      slips: [
        { id: 'cooled-down-again', solve: ({ firstStopS, restartS }) => restartS + firstStopS },
        { id: 'wait-forgotten', solve: ({ firstStopS, secondRunS }) => firstStopS + secondRunS },
        { id: 'stops-at-once', solve: ({ restartS }) => restartS },
        { id: 'run-only', solve: ({ secondRunS }) => secondRunS },
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
    toGoStep<Values>({
      id: 'smallToGoAgainRatio',
      part: 'fast',
      run: 1,
      runTime: 'secondRunS',
      before: 'smallToGoRatio',
      needs: ['secondRunS', 'smallToGoRatio'],
    }),
    toGoStep<Values>({
      id: 'bigToGoAgainRatio',
      part: 'slow',
      run: 1,
      runTime: 'secondRunS',
      before: 'bigToGoRatio',
      needs: ['secondRunS', 'bigToGoRatio'],
    }),
    runStep<Values>({ id: 'thirdRunS', run: 2, small: 'smallToGoAgainRatio', big: 'bigToGoAgainRatio' }),
    {
      kind: 'numeric',
      id: 'lockoutS',
      needs: ['inverter', 'rowA', 'firstStopS', 'secondStopS', 'thirdRunS'],
      solve: ({ inverter, secondStopS, thirdRunS }) => secondStopS + inverter.datasheet.waitS + thirdRunS,
      formula: sum('secondStopS', wait, 'thirdRunS'),
      tolerance: { absolute: 3 },
      source: 'derived',
      slips: [
        { id: 'one-stop-early', solve: ({ secondStopS }) => secondStopS },
        {
          id: 'one-stop-late',
          solve: ({ inverter, rowA, secondStopS, thirdRunS }) =>
            secondStopS + 2 * inverter.datasheet.waitS + thirdRunS + durationOf({ inverter, rowA }, 3),
        },
        {
          id: 'at-third-restart',
          solve: ({ inverter, secondStopS }) => secondStopS + inverter.datasheet.waitS,
        },
        { id: 'second-wait-forgotten', solve: ({ secondStopS, thirdRunS }) => secondStopS + thirdRunS },
        {
          id: 'whole-run-each-time',
          solve: ({ inverter, firstStopS, secondStopS }) =>
            secondStopS + inverter.datasheet.waitS + firstStopS,
        },
      ],
    },
  ],
});
