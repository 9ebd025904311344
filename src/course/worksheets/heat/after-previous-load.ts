import { type HeatState, heatTarget, type InverterModel, settledHeat } from '../../../engine/index.ts';
import { difference, fraction, product } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import { areApart } from './are-apart.ts';
import { demandFormula, heatQuantities, stopTimeEquation } from './heat-formula.ts';
import { perModel } from './per-model.ts';
import { readsWell, tableLoads } from './printed-curve.ts';
import { stopTimeOrNull, stopTimeS } from './stop-time.ts';

interface Values {
  inverter: InverterModel;
  previousRatio: number;
  loadRatio: number;
  heatBeforeRatio: number;
  timeFromNoLoadS: number;
  timeLeftS: number;
  lostShareRatio: number;
}

/** Previous loads that the printed tables have a row or a column for. */
const previousLoads = [0, 0.5, 0.6, 0.7, 0.8] as const;

const settledAt = (inverter: InverterModel, loadRatio: number): HeatState =>
  settledHeat(inverter, loadRatio * inverter.continuousA);

/** Heat of both nodes when their sum is known and has settled. */
const spread = (inverter: InverterModel, heatRatio: number): HeatState => {
  const fast = inverter.network.fastShareRatio * heatRatio;
  return { fast, slow: heatRatio - fast };
};

const curveAfter = (inverter: InverterModel, previousRatio: number) => (loadRatio: number) =>
  stopTimeOrNull({
    model: inverter,
    currentA: loadRatio * inverter.continuousA,
    heat: settledAt(inverter, previousRatio),
  });

const rowsOf = perModel((inverter) =>
  tableLoads(
    previousLoads.map((previous) => curveAfter(inverter, previous)),
    { from: 1.05, to: inverter.limitA / inverter.continuousA, widest: 0.1 },
  ),
);

const demandAt = (inverter: InverterModel, loadRatio: number): number =>
  heatTarget(inverter, loadRatio * inverter.continuousA);

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
    timeFromNoLoadS: { symbol: 't_cold', dimension: 'time' },
    timeLeftS: { symbol: 't', dimension: 'time' },
    lostShareRatio: { symbol: 'r', dimension: 'ratio' },
  },
  // Where the overload lasts only minutes, time and missing heat are nearly in proportion: the slip would be no slip.
  accepts: ({ inverter, previousRatio, loadRatio }) => {
    const fromNoLoadS = curveAfter(inverter, 0)(loadRatio);
    const leftS = curveAfter(inverter, previousRatio)(loadRatio);
    if (fromNoLoadS === null || leftS === null) return false;
    const { surge, longDuration } = inverter.datasheet;
    const lost = 1 - leftS / fromNoLoadS;
    return (
      previousLoads.some((previous) => previous === previousRatio) &&
      loadRatio < (inverter.limitA / inverter.continuousA) * 0.98 &&
      areApart([fromNoLoadS, leftS, surge.durationS, longDuration.durationS], 0.08) &&
      areApart(
        [leftS, fromNoLoadS * (1 - demandAt(inverter, previousRatio)), fromNoLoadS * (1 - previousRatio)],
        0.08,
      ) &&
      [1 - lost, lost / (1 - lost)].every((slip) => Math.abs(slip - lost) > 0.05) &&
      Math.abs(lost / (1 - lost) - (1 - lost)) > 0.05 &&
      readsWell(curveAfter(inverter, 0), rowsOf(inverter), loadRatio) &&
      readsWell(curveAfter(inverter, previousRatio), rowsOf(inverter), loadRatio)
    );
  },
  tables: ({ inverter }) => [
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
        ...previousLoads.map((previous) => ({
          id: `after${Math.round(previous * 100)}`,
          dimension: 'time' as const,
        })),
      ],
      rows: rowsOf(inverter).map((ratio) => [
        ratio,
        ...previousLoads.map((previous) => curveAfter(inverter, previous)(ratio)),
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
    {
      kind: 'numeric',
      id: 'timeFromNoLoadS',
      needs: ['inverter', 'previousRatio', 'loadRatio'],
      solve: ({ inverter, loadRatio }) =>
        stopTimeS({ model: inverter, currentA: loadRatio * inverter.continuousA }),
      formula: stopTimeEquation({
        current: product('loadRatio', 'inverter.continuousA'),
        time: 'timeFromNoLoadS',
      }),
      tolerance: { relative: 0.07 },
      source: 'derived',
      slips: [
        { id: 'surge-time', solve: ({ inverter }) => inverter.datasheet.surge.durationS },
        { id: 'long-duration-time', solve: ({ inverter }) => inverter.datasheet.longDuration.durationS },
        {
          id: 'previous-column',
          solve: ({ inverter, previousRatio, loadRatio }) => curveAfter(inverter, previousRatio)(loadRatio),
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'timeLeftS',
      needs: ['inverter', 'previousRatio', 'loadRatio', 'heatBeforeRatio', 'timeFromNoLoadS'],
      solve: ({ inverter, loadRatio, heatBeforeRatio }) =>
        stopTimeS({
          model: inverter,
          currentA: loadRatio * inverter.continuousA,
          heat: spread(inverter, heatBeforeRatio),
        }),
      formula: stopTimeEquation({
        current: product('loadRatio', 'inverter.continuousA'),
        time: 'timeLeftS',
        before: product('heatBeforeRatio', 'inverter.continuousLossW'),
      }),
      tolerance: { relative: 0.07 },
      source: 'derived',
      slips: [
        { id: 'as-from-no-load', solve: ({ timeFromNoLoadS }) => timeFromNoLoadS },
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
