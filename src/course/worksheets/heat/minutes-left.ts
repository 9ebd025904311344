import { type InverterModel, loadCurrent, overloadLevel } from '../../../engine/index.ts';
import { slipsApart } from '../current/slips-apart.ts';
import { fraction, product } from '../formula.ts';
import { defineWorksheet, type Worksheet } from '../worksheet.ts';
import { areApart } from './are-apart.ts';
import { heatQuantities, stopTimeEquation } from './heat-formula.ts';
import { perModel } from './per-model.ts';
import { readsWell, tableLoads } from './printed-curve.ts';
import { stopTimeOrNull, stopTimeS } from './stop-time.ts';

interface Values {
  inverter: InverterModel;
  realPowerW: number;
  powerFactor: number;
  loadA: number;
  loadRatio: number;
  level: string;
  timeToStopS: number;
}

type Givens = Pick<Values, 'inverter' | 'realPowerW' | 'powerFactor'>;

const currentOf = ({ inverter, realPowerW, powerFactor }: Givens): number =>
  loadCurrent({ realPowerW, powerFactor, voltageV: inverter.datasheet.acNominalV, phases: 1 }).currentA;

const curveOf = (inverter: InverterModel) => (loadRatio: number) =>
  stopTimeOrNull({ model: inverter, currentA: loadRatio * inverter.continuousA });

const rowsOf = perModel((inverter) =>
  tableLoads([curveOf(inverter)], { from: 1.02, to: inverter.limitA / inverter.continuousA, widest: 0.1 }),
);

/** What the wrong laws for the time give. */
const inverseTime = (inverter: InverterModel, currentA: number, exponent: 1 | 2): number =>
  inverter.datasheet.longDuration.durationS * (inverter.longDurationA / currentA) ** exponent;

const ratingsColumns = ['continuousA', 'longDurationA', 'surgeA', 'limitA'] as const;

export const minutesLeft: Worksheet = defineWorksheet<Values>({
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
    timeToStopS: { symbol: 't', dimension: 'time' },
  },
  accepts: (givens) => {
    const { inverter, powerFactor } = givens;
    const currentA = currentOf(givens);
    const ratio = currentA / inverter.continuousA;
    return (
      powerFactor <= 0.95 &&
      ratio >= 1.06 &&
      currentA < inverter.limitA * 0.98 &&
      areApart([1, powerFactor, powerFactor ** 2, Math.sqrt(1 / 3)], 0.015) &&
      areApart([ratio, 1 / ratio, currentA / inverter.surgeA, currentA / inverter.longDurationA], 0.012) &&
      areApart(
        [
          curveOf(inverter)(ratio),
          inverseTime(inverter, currentA, 1),
          inverseTime(inverter, currentA, 2),
          inverter.datasheet.surge.durationS,
          inverter.datasheet.longDuration.durationS,
        ],
        0.09,
      ) &&
      readsWell(curveOf(inverter), rowsOf(inverter), ratio) &&
      slipsApart(minutesLeft, { ...givens }, 'timeToStopS')
    );
  },
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
      rows: rowsOf(inverter).map((ratio) => [ratio, curveOf(inverter)(ratio)]),
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
    {
      kind: 'numeric',
      id: 'timeToStopS',
      needs: ['inverter', 'loadRatio'],
      solve: ({ inverter, loadRatio }) =>
        stopTimeS({ model: inverter, currentA: loadRatio * inverter.continuousA }),
      formula: stopTimeEquation({
        current: product('loadRatio', 'inverter.continuousA'),
        time: 'timeToStopS',
      }),
      tolerance: { relative: 0.08 },
      source: 'derived',
      slips: [
        {
          id: 'inverse-proportion',
          solve: ({ inverter, loadRatio }) => inverseTime(inverter, loadRatio * inverter.continuousA, 1),
        },
        {
          id: 'current-squared-times-time',
          solve: ({ inverter, loadRatio }) => inverseTime(inverter, loadRatio * inverter.continuousA, 2),
        },
        { id: 'surge-row', solve: ({ inverter }) => inverter.datasheet.surge.durationS },
        { id: 'long-duration-row', solve: ({ inverter }) => inverter.datasheet.longDuration.durationS },
      ],
    },
  ],
});
