import { type InverterModel, loadCurrent } from '../../../engine/index.ts';
import { areApart } from '../are-apart.ts';
import { fraction, product } from '../formula.ts';
import { demandStep, heatQuantities, stopTimeEquation, timeInSeconds } from '../heat/heat-formula.ts';
import { rowStep } from '../heat/row-step.ts';
import { stopTimeOrNull, stopTimeS } from '../heat/stop-time.ts';
import { currentRows, liesBetweenRows, rowBelow, rowFor, timeBetweenRows } from '../heat/table-rows.ts';
import { defineWorksheet, type NumericStep } from '../worksheet.ts';

interface PhaseLoad {
  phase: string;
  realPowerW: number;
  powerFactor: number;
}

interface Values {
  inverter: InverterModel;
  loads: readonly PhaseLoad[];
  currentL1A: number;
  currentL2A: number;
  currentL3A: number;
  firstPhase: string;
  rowA: number;
  demandRatio: number;
  stopAfterS: number;
  others: string;
}

type Givens = Pick<Values, 'inverter' | 'loads'>;

const phaseNames = ['L1', 'L2', 'L3'] as const;
const stepIds = { L1: 'currentL1A', L2: 'currentL2A', L3: 'currentL3A' } as const;
type PhaseName = (typeof phaseNames)[number];

function currentOf({ inverter, loads }: Givens, place: number): number {
  const load = loads[place];
  if (!load) throw new RangeError(`loads: expected three, found ${loads.length}`);
  const { realPowerW, powerFactor } = load;
  return loadCurrent({ realPowerW, powerFactor, voltageV: inverter.datasheet.acNominalV, phases: 1 })
    .currentA;
}

const meanCurrent = (givens: Givens): number =>
  givens.loads.reduce((total, _, place) => total + currentOf(givens, place), 0) / givens.loads.length;

/** One phase's current, and what the slips make of it. */
const currentsOf = (givens: Givens, place: number): number[] => {
  const currentA = currentOf(givens, place);
  const wattsOverVolts = currentA * (givens.loads[place]?.powerFactor ?? 1);
  return [currentA, wattsOverVolts, currentA / Math.sqrt(3), meanCurrent(givens)];
};

/** The phase for which a figure is largest; the first of equals. */
function phaseWithMost(figureOf: (place: number) => number): PhaseName {
  let best: PhaseName = 'L1';
  for (const [place, name] of phaseNames.entries()) {
    if (figureOf(place) > figureOf(phaseNames.indexOf(best))) best = name;
  }
  return best;
}

const mostWatts = ({ loads }: Givens): PhaseName => phaseWithMost((place) => loads[place]?.realPowerW ?? 0);
const worstPowerFactor = ({ loads }: Givens): PhaseName =>
  phaseWithMost((place) => -(loads[place]?.powerFactor ?? 1));

const curveOf = (inverter: InverterModel) => (currentA: number) =>
  stopTimeOrNull({ model: inverter, currentA });

/** The row of a current that stops the unit; null for one that never does. */
const rowOf = (inverter: InverterModel, currentA: number): number | null =>
  currentA > inverter.continuousA ? rowFor(currentRows(inverter), currentA) : null;

/** The row for the mean of the phases, and the one for the watts of the phase that stops. */
const meanRow = (givens: Givens): number | null => rowOf(givens.inverter, meanCurrent(givens));
const wattsRow = ({ inverter, loads }: Givens, name: PhaseName): number | null =>
  rowOf(inverter, (loads[phaseNames.indexOf(name)]?.realPowerW ?? 0) / inverter.datasheet.acNominalV);

const currentStep = (name: PhaseName, place: number): NumericStep<Values> => ({
  kind: 'numeric',
  id: stepIds[name],
  needs: ['inverter', 'loads'],
  solve: (values) => currentOf(values, place),
  formula: fraction(
    `loads.${place}.realPowerW`,
    product(`loads.${place}.powerFactor`, 'inverter.datasheet.acNominalV'),
  ),
  tolerance: { relative: 0.015 },
  source: 'bird',
  slips: [
    {
      id: 'watts-as-va',
      solve: ({ inverter, loads }) => (loads[place]?.realPowerW ?? 0) / inverter.datasheet.acNominalV,
    },
    { id: 'three-phase-root', solve: (values) => currentOf(values, place) / Math.sqrt(3) },
    { id: 'third-of-the-total', solve: meanCurrent },
  ],
});

const chosenPhase = (values: Values): PhaseName =>
  phaseNames.find((phase) => phase === values.firstPhase) ?? 'L1';
const chosenCurrent = (values: Values): number => values[stepIds[chosenPhase(values)]];

export const whichPhase = defineWorksheet<Values>({
  id: 'which-phase',
  unit: 2,
  givens: {
    inverter: { kind: 'inverter' },
    loads: {
      kind: 'list',
      of: {
        phase: { kind: 'choice', options: phaseNames },
        realPowerW: { kind: 'number', dimension: 'real-power', from: 50, to: 50_000 },
        powerFactor: { kind: 'number', dimension: 'ratio', from: 0.4, to: 1 },
      },
      from: 3,
      to: 3,
    },
  },
  quantities: {
    ...heatQuantities,
    'loads.*.realPowerW': { symbol: 'P_L*', dimension: 'real-power' },
    'loads.*.powerFactor': { symbol: 'PF_L*', dimension: 'ratio' },
    currentL1A: { symbol: 'I_L1', dimension: 'current', unit: 'A' },
    currentL2A: { symbol: 'I_L2', dimension: 'current', unit: 'A' },
    currentL3A: { symbol: 'I_L3', dimension: 'current', unit: 'A' },
    rowA: { symbol: 'I_row', dimension: 'current', unit: 'A', figures: 'as-is' },
    demandRatio: { symbol: 'u', dimension: 'ratio' },
    stopAfterS: timeInSeconds('t'),
  },
  // Most watts, worst power factor and most current on three different phases: the question is which of them counts.
  accepts: (givens) => {
    const { inverter, loads } = givens;
    const currents = phaseNames.map((_, place) => currentOf(givens, place));
    const key = phaseWithMost((place) => currents[place] ?? 0);
    const most = Math.max(...currents);
    const rows = currentRows(inverter);
    const row = rowFor(rows, most);
    const otherRows = [rowBelow(rows, most), meanRow(givens), wattsRow(givens, key)];
    if (row === null || !liesBetweenRows(rows, most)) return false;
    const rest = currents.filter((_, place) => phaseNames[place] !== key);
    return (
      loads.every(({ phase }, place) => phase === phaseNames[place]) &&
      new Set([key, mostWatts(givens), worstPowerFactor(givens)]).size === 3 &&
      Math.max(...rest) < most * 0.95 &&
      phaseNames.every((_, place) => areApart([...currentsOf(givens, place)], 0.02)) &&
      areApart([row, ...otherRows], 0.005) &&
      areApart(
        [
          curveOf(inverter)(row),
          timeBetweenRows(curveOf(inverter), rows, most),
          inverter.datasheet.surge.durationS,
          inverter.datasheet.longDuration.durationS,
        ],
        0.035,
      )
    );
  },
  datasheetLines: ['output', 'continuous', 'longDuration', 'surge'],
  tables: ({ inverter }) => [
    {
      id: 'timeToStop',
      columns: [
        { id: 'currentA', dimension: 'current' },
        { id: 'timeS', dimension: 'time' },
      ],
      rows: currentRows(inverter).map((currentA) => [currentA, curveOf(inverter)(currentA)]),
    },
  ],
  steps: [
    currentStep('L1', 0),
    currentStep('L2', 1),
    currentStep('L3', 2),
    {
      kind: 'choice',
      id: 'firstPhase',
      needs: ['inverter', 'loads', 'currentL1A', 'currentL2A', 'currentL3A'],
      options: phaseNames,
      solve: (values) => phaseWithMost((place) => values[stepIds[phaseNames[place] ?? 'L1']]),
      source: 'common-practice',
      slips: [
        { id: 'most-watts', solve: mostWatts },
        { id: 'worst-power-factor', solve: worstPowerFactor },
      ],
    },
    rowStep<Values>({
      id: 'rowA',
      needs: ['inverter', 'loads', 'currentL1A', 'currentL2A', 'currentL3A', 'firstPhase'],
      rows: ({ inverter }) => currentRows(inverter),
      load: chosenCurrent,
      slips: [
        { id: 'mean-of-the-phases', solve: meanRow },
        { id: 'row-of-watts', solve: (values) => wattsRow(values, chosenPhase(values)) },
      ],
    }),
    demandStep<Values>({
      id: 'demandRatio',
      needs: ['inverter', 'rowA'],
      currentA: ({ rowA }) => rowA,
      current: 'rowA',
    }),
    {
      kind: 'numeric',
      id: 'stopAfterS',
      needs: ['inverter', 'currentL1A', 'currentL2A', 'currentL3A', 'firstPhase', 'rowA', 'demandRatio'],
      solve: ({ inverter, rowA }) => stopTimeS({ model: inverter, currentA: rowA }),
      formula: stopTimeEquation({ demand: 'demandRatio', time: 'stopAfterS' }),
      tolerance: { relative: 0.03 },
      source: 'derived',
      slips: [
        {
          id: 'between-rows',
          solve: (values) =>
            timeBetweenRows(curveOf(values.inverter), currentRows(values.inverter), chosenCurrent(values)),
        },
        { id: 'surge-row', solve: ({ inverter }) => inverter.datasheet.surge.durationS },
        { id: 'long-duration-row', solve: ({ inverter }) => inverter.datasheet.longDuration.durationS },
      ],
    },
    {
      kind: 'choice',
      id: 'others',
      needs: ['firstPhase'],
      options: ['carry-on', 'take-over', 'all-stop', 'stop-one-by-one'],
      solve: () => 'all-stop',
      source: 'common-practice',
      slips: [
        { id: 'only-one-stops', solve: () => 'carry-on' },
        { id: 'neighbours-help', solve: () => 'take-over' },
        { id: 'each-on-its-own-heat', solve: () => 'stop-one-by-one' },
      ],
    },
  ],
});
