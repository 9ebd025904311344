import type { InverterModel } from '../../../engine/index.ts';
import { difference, fraction, product, sum } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';

interface Values {
  inverter: InverterModel;
  dipV: number;
  dipS: number;
  dips: number;
  heldV: number;
  counterS: number;
  outcome: string;
  lockoutS: number;
}

const frequency = 'inverter.datasheet.frequencyHz';
const cycles = 'inverter.datasheet.voltageLostCycles';
const nominal = 'inverter.datasheet.acNominalV';
const heldShare = 'inverter.datasheet.voltageHeldRatio';
const wait = 'inverter.datasheet.waitS';
const stops = 'inverter.datasheet.stopsToLockout';

const heldOf = ({ datasheet }: InverterModel): number => datasheet.voltageHeldRatio * datasheet.acNominalV;
const counterOf = ({ datasheet }: InverterModel): number =>
  datasheet.voltageLostCycles / datasheet.frequencyHz;

export const cycleCounter = defineWorksheet<Values>({
  id: 'cycle-counter',
  unit: 2,
  givens: {
    inverter: { kind: 'inverter' },
    dipV: { kind: 'number', dimension: 'voltage', from: 10, to: 260 },
    dipS: { kind: 'number', dimension: 'time', from: 0.01, to: 10 },
    dips: { kind: 'number', dimension: 'count', from: 2, to: 6 },
  },
  quantities: {
    [nominal]: { symbol: 'U_nom', dimension: 'voltage', unit: 'V' },
    [heldShare]: { symbol: 'r_held', dimension: 'ratio' },
    [frequency]: { symbol: 'f', dimension: 'frequency' },
    [cycles]: { symbol: 'n_cycles', dimension: 'cycles' },
    [wait]: { symbol: 't_wait', dimension: 'time' },
    [stops]: { symbol: 'n_stops', dimension: 'count' },
    dipV: { symbol: 'U_dip', dimension: 'voltage', unit: 'V' },
    dipS: { symbol: 't_dip', dimension: 'time' },
    dips: { symbol: 'n_dips', dimension: 'count' },
    heldV: { symbol: 'U_held', dimension: 'voltage', unit: 'V' },
    counterS: { symbol: 't_count', dimension: 'time', unit: 'ms' },
    lockoutS: { symbol: 't_lock', dimension: 'time', unit: 's' },
  },
  accepts: ({ inverter, dipV, dipS, dips }) => {
    const counterS = counterOf(inverter);
    return (
      Number.isInteger(dips) &&
      inverter.datasheet.stopsToLockout >= 2 &&
      dipV < inverter.datasheet.acNominalV &&
      Math.abs(dipV / heldOf(inverter) - 1) > 0.015 &&
      Math.abs(dipS / counterS - 1) > 0.05 &&
      // Together the dips outlast the counter: only then is it worth asking whether it adds them up.
      dipS * dips > counterS * 1.1
    );
  },
  datasheetLines: ['output', 'voltageHeld', 'cycles', 'wait', 'lockout'],
  steps: [
    {
      kind: 'numeric',
      id: 'heldV',
      needs: ['inverter'],
      solve: ({ inverter }) => heldOf(inverter),
      formula: product(heldShare, nominal),
      tolerance: { relative: 0.005 },
      source: 'invented-data',
      slips: [
        { id: 'nominal-is-the-bound', solve: ({ inverter }) => inverter.datasheet.acNominalV },
        {
          id: 'the-missing-part',
          solve: ({ inverter }) => inverter.datasheet.acNominalV - heldOf(inverter),
        },
        { id: 'nothing-left', solve: () => 0 },
      ],
    },
    {
      kind: 'numeric',
      id: 'counterS',
      needs: ['inverter'],
      solve: ({ inverter }) => counterOf(inverter),
      formula: fraction(cycles, frequency),
      tolerance: { relative: 0.01 },
      source: 'invented-data',
      plausibleRatio: { from: 0.4, to: 2.5 },
      slips: [
        { id: 'half-cycles', solve: ({ inverter }) => counterOf(inverter) / 2 },
        {
          id: 'other-frequency',
          solve: ({ inverter }) =>
            inverter.datasheet.voltageLostCycles / (inverter.datasheet.frequencyHz === 50 ? 60 : 50),
        },
        { id: 'cycles-as-seconds', solve: ({ inverter }) => inverter.datasheet.voltageLostCycles },
        {
          id: 'cycles-as-milliseconds',
          solve: ({ inverter }) => inverter.datasheet.voltageLostCycles / 1000,
        },
        { id: 'one-cycle', solve: ({ inverter }) => 1 / inverter.datasheet.frequencyHz },
      ],
    },
    {
      kind: 'choice',
      id: 'outcome',
      needs: ['dipV', 'dipS', 'dips', 'heldV', 'counterS'],
      options: ['counter-idle', 'recovers-in-time', 'stops-by-sum', 'stops-in-first'],
      solve: ({ dipV, dipS, heldV, counterS }) => {
        if (dipV >= heldV) return 'counter-idle';
        return dipS < counterS ? 'recovers-in-time' : 'stops-in-first';
      },
      source: 'common-practice',
      slips: [
        { id: 'thinks-held', solve: () => 'counter-idle' },
        { id: 'thinks-in-time', solve: () => 'recovers-in-time' },
        { id: 'dips-added-up', solve: () => 'stops-by-sum' },
        { id: 'any-dip-stops', solve: () => 'stops-in-first' },
      ],
    },
    {
      kind: 'numeric',
      id: 'lockoutS',
      needs: ['inverter', 'counterS'],
      solve: ({ inverter, counterS }) => {
        const { stopsToLockout, waitS } = inverter.datasheet;
        return stopsToLockout * counterS + (stopsToLockout - 1) * waitS;
      },
      formula: sum(product(stops, 'counterS'), product(difference(stops, 1), wait)),
      tolerance: { absolute: 0.1 },
      source: 'invented-data',
      slips: [
        {
          id: 'wait-after-the-last',
          solve: ({ inverter, counterS }) =>
            inverter.datasheet.stopsToLockout * (counterS + inverter.datasheet.waitS),
        },
        {
          id: 'counter-left-out',
          solve: ({ inverter }) => (inverter.datasheet.stopsToLockout - 1) * inverter.datasheet.waitS,
        },
        {
          id: 'counted-once',
          solve: ({ inverter, counterS }) =>
            counterS + (inverter.datasheet.stopsToLockout - 1) * inverter.datasheet.waitS,
        },
        { id: 'at-the-first-stop', solve: ({ counterS }) => counterS },
      ],
    },
  ],
});
