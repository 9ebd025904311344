import { type InverterModel, loadCurrent } from '../../../engine/index.ts';
import { fraction, product } from '../formula.ts';
import { areApart } from '../heat/are-apart.ts';
import { heatQuantities, stopTimeEquation } from '../heat/heat-formula.ts';
import { perModel } from '../heat/per-model.ts';
import { readsWell, tableLoads } from '../heat/printed-curve.ts';
import { stopTimeOrNull, stopTimeS } from '../heat/stop-time.ts';
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

const rowsOf = perModel((inverter) =>
  tableLoads([curveOf(inverter)], {
    from: inverter.continuousA,
    to: inverter.limitA,
    widest: inverter.continuousA / 8,
  }),
);

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

const chosenCurrent = (values: Values): number => {
  const name = phaseNames.find((phase) => phase === values.firstPhase) ?? 'L1';
  return values[stepIds[name]];
};

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
    stopAfterS: { symbol: 't', dimension: 'time' },
  },
  // Most watts, worst power factor and most current on three different phases: the question is which of them counts.
  accepts: (givens) => {
    const { inverter, loads } = givens;
    const currents = phaseNames.map((_, place) => currentOf(givens, place));
    const key = phaseWithMost((place) => currents[place] ?? 0);
    const most = Math.max(...currents);
    const rest = currents.filter((_, place) => phaseNames[place] !== key);
    return (
      loads.every(({ phase }, place) => phase === phaseNames[place]) &&
      new Set([key, mostWatts(givens), worstPowerFactor(givens)]).size === 3 &&
      most > inverter.continuousA * 1.06 &&
      most < inverter.limitA * 0.98 &&
      Math.max(...rest) < most * 0.95 &&
      phaseNames.every((_, place) => areApart([...currentsOf(givens, place)], 0.02)) &&
      areApart(
        [
          curveOf(inverter)(most),
          curveOf(inverter)(meanCurrent(givens)),
          inverter.datasheet.surge.durationS,
          inverter.datasheet.longDuration.durationS,
        ],
        0.075,
      ) &&
      readsWell(curveOf(inverter), rowsOf(inverter), most)
    );
  },
  tables: ({ inverter }) => [
    {
      id: 'timeToStop',
      columns: [
        { id: 'currentA', dimension: 'current' },
        { id: 'timeS', dimension: 'time' },
      ],
      rows: rowsOf(inverter).map((currentA) => [currentA, curveOf(inverter)(currentA)]),
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
    {
      kind: 'numeric',
      id: 'stopAfterS',
      needs: ['inverter', 'loads', 'currentL1A', 'currentL2A', 'currentL3A', 'firstPhase'],
      solve: (values) => stopTimeS({ model: values.inverter, currentA: chosenCurrent(values) }),
      formula: ({ firstPhase }) =>
        stopTimeEquation({
          current: stepIds[phaseNames.find((phase) => phase === firstPhase) ?? 'L1'],
          time: 'stopAfterS',
        }),
      tolerance: { relative: 0.07 },
      source: 'derived',
      slips: [
        {
          id: 'mean-of-the-phases',
          solve: (values) => stopTimeOrNull({ model: values.inverter, currentA: meanCurrent(values) }),
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
