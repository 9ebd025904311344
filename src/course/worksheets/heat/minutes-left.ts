import { type InverterModel, loadCurrent, overloadLevel } from '../../../engine/index.ts';
import { areApart } from '../are-apart.ts';
import { fraction, product } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import { demandStep, heatQuantities, stopTimeEquation, timeInSeconds } from './heat-formula.ts';
import { rowStep } from './row-step.ts';
import { stopTimeOrNull, stopTimeS } from './stop-time.ts';
import { liesBetweenRows, multipleRows, rowBelow, rowFor, timeBetweenRows } from './table-rows.ts';

interface Values {
  inverter: InverterModel;
  realPowerW: number;
  powerFactor: number;
  loadA: number;
  loadRatio: number;
  level: string;
  rowRatio: number;
  demandRatio: number;
  timeToStopS: number;
}

type Givens = Pick<Values, 'inverter' | 'realPowerW' | 'powerFactor'>;

const currentOf = ({ inverter, realPowerW, powerFactor }: Givens): number =>
  loadCurrent({ realPowerW, powerFactor, voltageV: inverter.datasheet.acNominalV, phases: 1 }).currentA;

const curveOf = (inverter: InverterModel) => (loadRatio: number) =>
  stopTimeOrNull({ model: inverter, currentA: loadRatio * inverter.continuousA });

/** The row of the watts, taken as volt-amperes. */
const rowOfWatts = ({ inverter, realPowerW }: Pick<Givens, 'inverter' | 'realPowerW'>): number | null =>
  rowFor(multipleRows(inverter), realPowerW / inverter.datasheet.acNominalV / inverter.continuousA);

/** What the wrong laws for the time give. */
const inverseTime = (inverter: InverterModel, loadRatio: number, exponent: 1 | 2): number =>
  inverter.datasheet.longDuration.durationS *
  (inverter.longDurationA / (loadRatio * inverter.continuousA)) ** exponent;

const ratingsColumns = ['continuousA', 'longDurationA', 'surgeA', 'limitA'] as const;

function accepts(givens: Givens): boolean {
  const { inverter, powerFactor } = givens;
  const currentA = currentOf(givens);
  const ratio = currentA / inverter.continuousA;
  const rows = multipleRows(inverter);
  const row = rowFor(rows, ratio);
  if (powerFactor > 0.95 || row === null || !liesBetweenRows(rows, ratio)) return false;
  return (
    Math.abs(currentA / inverter.longDurationA - 1) > 0.012 &&
    // The slips of the current lead through to the multiple where the current is not asked.
    areApart(
      [
        ratio,
        ratio * powerFactor,
        ratio * powerFactor ** 2,
        ratio / Math.sqrt(3),
        1 / ratio,
        currentA / inverter.surgeA,
        currentA / inverter.longDurationA,
      ],
      0.012,
    ) &&
    new Set([row, rowBelow(rows, ratio), rowOfWatts(givens)]).size === 3 &&
    areApart(
      [
        curveOf(inverter)(row),
        timeBetweenRows(curveOf(inverter), rows, ratio),
        inverseTime(inverter, ratio, 1),
        inverseTime(inverter, ratio, 2),
        inverter.datasheet.surge.durationS,
        inverter.datasheet.longDuration.durationS,
      ],
      0.035,
    )
  );
}

export const minutesLeft = defineWorksheet<Values>({
  id: 'minutes-left',
  unit: 2,
  givens: {
    inverter: { kind: 'inverter' },
    realPowerW: { kind: 'number', dimension: 'real-power', from: 100, to: 50_000 },
    powerFactor: { kind: 'number', dimension: 'ratio', from: 0.5, to: 1 },
  },
  quantities: {
    ...heatQuantities,
    realPowerW: { symbol: 'P', dimension: 'real-power' },
    powerFactor: { symbol: 'PF', dimension: 'ratio' },
    loadA: { symbol: 'I', dimension: 'current', unit: 'A' },
    loadRatio: { symbol: 'm', dimension: 'ratio' },
    rowRatio: { symbol: 'm_row', dimension: 'ratio' },
    demandRatio: { symbol: 'u', dimension: 'ratio' },
    timeToStopS: timeInSeconds('t'),
  },
  accepts,
  datasheetLines: ['output', 'continuous', 'longDuration', 'surge', 'currentLimit'],
  tables: ({ inverter }) => [
    {
      id: 'ratings',
      columns: ratingsColumns.map((id) => ({ id, dimension: 'current' as const })),
      rows: [ratingsColumns.map((id) => inverter[id])],
    },
    {
      id: 'timeToStop',
      columns: [
        { id: 'loadRatio', dimension: 'ratio' },
        { id: 'timeS', dimension: 'time' },
      ],
      rows: multipleRows(inverter).map((ratio) => [ratio, curveOf(inverter)(ratio)]),
    },
  ],
  steps: [
    {
      kind: 'numeric',
      id: 'loadA',
      needs: ['inverter', 'realPowerW', 'powerFactor'],
      solve: currentOf,
      formula: fraction('realPowerW', product('powerFactor', 'inverter.datasheet.acNominalV')),
      tolerance: { relative: 0.01 },
      source: 'bird',
      slips: [
        {
          id: 'watts-as-va',
          solve: ({ realPowerW, inverter }) => realPowerW / inverter.datasheet.acNominalV,
        },
        {
          id: 'times-power-factor',
          solve: ({ realPowerW, powerFactor, inverter }) =>
            (realPowerW * powerFactor) / inverter.datasheet.acNominalV,
        },
        { id: 'three-phase-root', solve: (values) => currentOf(values) / Math.sqrt(3) },
      ],
    },
    {
      kind: 'numeric',
      id: 'loadRatio',
      needs: ['inverter', 'loadA'],
      solve: ({ inverter, loadA }) => loadA / inverter.continuousA,
      formula: fraction('loadA', 'inverter.continuousA'),
      tolerance: { relative: 0.01 },
      source: 'derived',
      slips: [
        { id: 'of-surge', solve: ({ inverter, loadA }) => loadA / inverter.surgeA },
        { id: 'of-long-duration', solve: ({ inverter, loadA }) => loadA / inverter.longDurationA },
        { id: 'upside-down', solve: ({ inverter, loadA }) => inverter.continuousA / loadA },
      ],
    },
    {
      kind: 'choice',
      id: 'level',
      needs: ['inverter', 'loadA'],
      options: ['none', 'heat', 'surge', 'voltage-lost'],
      solve: ({ inverter, loadA }) =>
        overloadLevel({ model: inverter, demandA: loadA, ambientC: inverter.datasheet.referenceAmbientC }),
      source: 'common-practice',
      slips: [
        { id: 'no-overload', solve: () => 'none' },
        { id: 'only-heat', solve: () => 'heat' },
        { id: 'surge-too-soon', solve: () => 'surge' },
        { id: 'voltage-gone', solve: () => 'voltage-lost' },
      ],
    },
    rowStep<Values>({
      id: 'rowRatio',
      needs: ['inverter', 'realPowerW', 'loadRatio'],
      rows: ({ inverter }) => multipleRows(inverter),
      load: ({ loadRatio }) => loadRatio,
      slips: [{ id: 'row-of-watts', solve: rowOfWatts }],
    }),
    demandStep<Values>({
      id: 'demandRatio',
      needs: ['inverter', 'rowRatio'],
      currentA: ({ inverter, rowRatio }) => rowRatio * inverter.continuousA,
      current: product('rowRatio', 'inverter.continuousA'),
    }),
    {
      kind: 'numeric',
      id: 'timeToStopS',
      needs: ['inverter', 'loadRatio', 'rowRatio', 'demandRatio'],
      solve: ({ inverter, rowRatio }) =>
        stopTimeS({ model: inverter, currentA: rowRatio * inverter.continuousA }),
      formula: stopTimeEquation({ demand: 'demandRatio', time: 'timeToStopS' }),
      tolerance: { relative: 0.03 },
      source: 'derived',
      slips: [
        {
          id: 'between-rows',
          solve: ({ inverter, loadRatio }) =>
            timeBetweenRows(curveOf(inverter), multipleRows(inverter), loadRatio),
        },
        { id: 'inverse-proportion', solve: ({ inverter, loadRatio }) => inverseTime(inverter, loadRatio, 1) },
        {
          id: 'current-squared-times-time',
          solve: ({ inverter, loadRatio }) => inverseTime(inverter, loadRatio, 2),
        },
        { id: 'surge-row', solve: ({ inverter }) => inverter.datasheet.surge.durationS },
        { id: 'long-duration-row', solve: ({ inverter }) => inverter.datasheet.longDuration.durationS },
      ],
    },
  ],
});
