import type { InverterModel } from '../../../engine/index.ts';
import { difference, fraction, product } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import {
  demandFormula,
  demandStep,
  heatQuantities,
  stopTimeEquation,
  timeInSeconds,
} from './heat-formula.ts';
import {
  columnsOf,
  curveAfter,
  demandAt,
  isTellingLoad,
  otherPrevious,
  previousLoads,
  spread,
} from './previous-load.ts';
import { rowStep } from './row-step.ts';
import { stopTimeS } from './stop-time.ts';
import { multipleRows, rowFor, timeBetweenRows } from './table-rows.ts';

interface Values {
  inverter: InverterModel;
  previousRatio: number;
  loadRatio: number;
  heatBeforeRatio: number;
  rowRatio: number;
  demandRatio: number;
  timeFromNoLoadS: number;
  timeLeftS: number;
  lostShareRatio: number;
}

export const afterPreviousLoad = defineWorksheet<Values>({
  id: 'after-previous-load',
  unit: 2,
  givens: {
    inverter: { kind: 'inverter' },
    previousRatio: { kind: 'number', dimension: 'ratio', from: 0.5, to: 0.8 },
    loadRatio: { kind: 'number', dimension: 'ratio', from: 1.05, to: 3 },
  },
  quantities: {
    ...heatQuantities,
    previousRatio: { symbol: 'm_before', dimension: 'ratio' },
    loadRatio: { symbol: 'm', dimension: 'ratio' },
    heatBeforeRatio: { symbol: 'h_before', dimension: 'ratio' },
    rowRatio: { symbol: 'm_row', dimension: 'ratio' },
    demandRatio: { symbol: 'u', dimension: 'ratio' },
    timeFromNoLoadS: timeInSeconds('t_idle'),
    timeLeftS: timeInSeconds('t'),
    lostShareRatio: { symbol: 'r', dimension: 'ratio' },
  },
  accepts: isTellingLoad,
  datasheetLines: ['continuous', 'longDuration', 'surge'],
  tables: ({ inverter, previousRatio }) => [
    {
      id: 'losses',
      columns: [
        { id: 'loadRatio', dimension: 'ratio' },
        { id: 'lossW', dimension: 'real-power' },
      ],
      rows: [...previousLoads, 1].map((ratio) => [
        ratio,
        demandAt(inverter, ratio) * inverter.continuousLossW,
      ]),
    },
    {
      id: 'timeToStop',
      columns: [
        { id: 'loadRatio', dimension: 'ratio' },
        ...columnsOf(previousRatio).map((previous) => ({
          id: `after${Math.round(previous * 100)}`,
          dimension: 'time' as const,
        })),
      ],
      rows: multipleRows(inverter).map((ratio) => [
        ratio,
        ...columnsOf(previousRatio).map((previous) => curveAfter(inverter, previous)(ratio)),
      ]),
    },
  ],
  steps: [
    {
      kind: 'numeric',
      id: 'heatBeforeRatio',
      needs: ['inverter', 'previousRatio'],
      solve: ({ inverter, previousRatio }) => demandAt(inverter, previousRatio),
      formula: demandFormula(product('previousRatio', 'inverter.continuousA')),
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [
        { id: 'like-the-current', solve: ({ previousRatio }) => previousRatio },
        { id: 'like-the-square', solve: ({ previousRatio }) => previousRatio ** 2 },
        {
          id: 'no-load-loss-taken-off',
          solve: ({ inverter, previousRatio }) => {
            const idle = demandAt(inverter, 0);
            return (demandAt(inverter, previousRatio) - idle) / (1 - idle);
          },
        },
        { id: 'what-is-left', solve: ({ inverter, previousRatio }) => 1 - demandAt(inverter, previousRatio) },
      ],
    },
    rowStep<Values>({
      id: 'rowRatio',
      needs: ['inverter', 'previousRatio', 'loadRatio'],
      rows: ({ inverter }) => multipleRows(inverter),
      load: ({ loadRatio }) => loadRatio,
      slips: [
        {
          id: 'loads-added',
          solve: ({ inverter, previousRatio, loadRatio }) =>
            rowFor(multipleRows(inverter), previousRatio + loadRatio),
        },
      ],
    }),
    demandStep<Values>({
      id: 'demandRatio',
      needs: ['inverter', 'rowRatio'],
      currentA: ({ inverter, rowRatio }) => rowRatio * inverter.continuousA,
      current: product('rowRatio', 'inverter.continuousA'),
    }),
    {
      kind: 'numeric',
      id: 'timeFromNoLoadS',
      needs: ['inverter', 'previousRatio', 'loadRatio', 'rowRatio', 'demandRatio'],
      solve: ({ inverter, rowRatio }) =>
        stopTimeS({ model: inverter, currentA: rowRatio * inverter.continuousA }),
      formula: stopTimeEquation({ demand: 'demandRatio', time: 'timeFromNoLoadS' }),
      tolerance: { relative: 0.03 },
      source: 'derived',
      slips: [
        {
          id: 'previous-column',
          solve: ({ inverter, previousRatio, rowRatio }) => curveAfter(inverter, previousRatio)(rowRatio),
        },
        {
          id: 'between-rows',
          solve: ({ inverter, loadRatio }) =>
            timeBetweenRows(curveAfter(inverter, 0), multipleRows(inverter), loadRatio),
        },
        { id: 'surge-time', solve: ({ inverter }) => inverter.datasheet.surge.durationS },
        { id: 'long-duration-time', solve: ({ inverter }) => inverter.datasheet.longDuration.durationS },
      ],
    },
    {
      kind: 'numeric',
      id: 'timeLeftS',
      needs: [
        'inverter',
        'previousRatio',
        'loadRatio',
        'heatBeforeRatio',
        'rowRatio',
        'demandRatio',
        'timeFromNoLoadS',
      ],
      solve: ({ inverter, rowRatio, heatBeforeRatio }) =>
        stopTimeS({
          model: inverter,
          currentA: rowRatio * inverter.continuousA,
          heat: spread(inverter, heatBeforeRatio),
        }),
      formula: stopTimeEquation({ demand: 'demandRatio', time: 'timeLeftS', start: 'heatBeforeRatio' }),
      tolerance: { relative: 0.03 },
      source: 'derived',
      slips: [
        { id: 'as-from-no-load', solve: ({ timeFromNoLoadS }) => timeFromNoLoadS },
        {
          id: 'other-column',
          solve: ({ inverter, previousRatio, rowRatio }) =>
            curveAfter(inverter, otherPrevious(previousRatio))(rowRatio),
        },
        {
          id: 'between-rows',
          solve: ({ inverter, previousRatio, loadRatio }) =>
            timeBetweenRows(curveAfter(inverter, previousRatio), multipleRows(inverter), loadRatio),
        },
        {
          id: 'heat-taken-off-time',
          solve: ({ timeFromNoLoadS, heatBeforeRatio }) => timeFromNoLoadS * (1 - heatBeforeRatio),
        },
        {
          id: 'load-taken-off-time',
          solve: ({ timeFromNoLoadS, previousRatio }) => timeFromNoLoadS * (1 - previousRatio),
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'lostShareRatio',
      needs: ['timeFromNoLoadS', 'timeLeftS'],
      solve: ({ timeFromNoLoadS, timeLeftS }) => 1 - timeLeftS / timeFromNoLoadS,
      formula: difference(1, fraction('timeLeftS', 'timeFromNoLoadS')),
      tolerance: { absolute: 0.04 },
      source: 'derived',
      slips: [
        { id: 'share-that-stays', solve: ({ timeFromNoLoadS, timeLeftS }) => timeLeftS / timeFromNoLoadS },
        {
          id: 'of-the-shorter-time',
          solve: ({ timeFromNoLoadS, timeLeftS }) => (timeFromNoLoadS - timeLeftS) / timeLeftS,
        },
        { id: 'upside-down', solve: ({ timeFromNoLoadS, timeLeftS }) => timeFromNoLoadS / timeLeftS },
      ],
    },
  ],
});
