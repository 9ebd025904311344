import { loadCurrent } from '../../../engine/index.ts';
import { fraction, power, root, sum } from '../formula.ts';
import { slipsApart } from '../slips-apart.ts';
import { defineWorksheet, type Worksheet } from '../worksheet.ts';
import {
  add,
  apparentPowersVa,
  type NameplateLoad,
  reactivePowerSum,
  reactivePowersVar,
  realPowerSum,
  realPowersW,
  totalApparentPowerVa,
} from './load-list.ts';

interface Values {
  loads: readonly NameplateLoad[];
  voltageV: number;
  totalPowerW: number;
  totalReactivePowerVar: number;
  apparentPowerVa: number;
  currentA: number;
}

/** Reading the power factor as a share to be taken off the watts. */
const wattsTimesPowerFactor = ({ loads }: Values): number =>
  add(loads.map((load) => load.realPowerW * load.powerFactor));

const meanPowerFactor = ({ loads }: Values): number =>
  add(loads.map((load) => load.powerFactor)) / loads.length;

export const loadsTogether: Worksheet = defineWorksheet<Values>({
  id: 'loads-together',
  unit: 1,
  givens: {
    loads: {
      kind: 'list',
      of: {
        name: { kind: 'text' },
        realPowerW: { kind: 'number', dimension: 'real-power', from: 20, to: 20_000 },
        powerFactor: { kind: 'number', dimension: 'ratio', from: 0.3, to: 1 },
      },
      from: 2,
      to: 4,
    },
    voltageV: { kind: 'number', dimension: 'voltage', from: 100, to: 260 },
  },
  quantities: {
    'loads.*.realPowerW': { symbol: 'P_*', dimension: 'real-power', unit: 'W' },
    'loads.*.powerFactor': { symbol: 'PF_*', dimension: 'ratio' },
    voltageV: { symbol: 'U', dimension: 'voltage', unit: 'V' },
    totalPowerW: { symbol: 'P', dimension: 'real-power', unit: 'W' },
    totalReactivePowerVar: { symbol: 'Q', dimension: 'reactive-power', unit: 'var' },
    apparentPowerVa: { symbol: 'S', dimension: 'apparent-power', unit: 'VA' },
    currentA: { symbol: 'I', dimension: 'current', unit: 'A' },
  },
  // The lesson is lost where adding volt-amperes would do, or watts alone, or where two wrong ways meet in one current.
  accepts: (givens) => {
    const { loads } = givens;
    const realW = add(realPowersW(loads));
    const triangleVa = totalApparentPowerVa(loads);
    const clear = add(apparentPowersVa(loads)) / triangleVa > 1.025 && triangleVa / realW > 1.03;
    return clear && slipsApart(loadsTogether, { ...givens }, 'currentA');
  },
  steps: [
    {
      kind: 'numeric',
      id: 'totalPowerW',
      needs: ['loads'],
      solve: ({ loads }) => add(realPowersW(loads)),
      formula: ({ loads }) => realPowerSum(loads),
      tolerance: { relative: 0.01 },
      source: 'bird',
      slips: [
        { id: 'volt-amperes-added', solve: ({ loads }) => add(apparentPowersVa(loads)) },
        { id: 'times-power-factor', solve: wattsTimesPowerFactor },
        { id: 'largest-only', solve: ({ loads }) => Math.max(...realPowersW(loads)) },
      ],
    },
    {
      kind: 'numeric',
      id: 'totalReactivePowerVar',
      needs: ['loads'],
      solve: ({ loads }) => add(reactivePowersVar(loads)),
      formula: ({ loads }) => reactivePowerSum(loads),
      tolerance: { relative: 0.02 },
      source: 'bird',
      slips: [
        {
          id: 'watts-taken-off',
          solve: ({ loads }) => add(apparentPowersVa(loads)) - add(realPowersW(loads)),
        },
        {
          id: 'sine-of-watts',
          solve: ({ loads }) =>
            add(loads.map((load) => load.realPowerW * Math.sqrt(1 - load.powerFactor ** 2))),
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'apparentPowerVa',
      needs: ['totalPowerW', 'totalReactivePowerVar', 'loads'],
      solve: ({ totalPowerW, totalReactivePowerVar }) => Math.hypot(totalPowerW, totalReactivePowerVar),
      formula: root(sum(power('totalPowerW', 2), power('totalReactivePowerVar', 2))),
      tolerance: { relative: 0.01 },
      source: 'bird',
      slips: [
        { id: 'volt-amperes-added', solve: ({ loads }) => add(apparentPowersVa(loads)) },
        {
          id: 'sides-added',
          solve: ({ totalPowerW, totalReactivePowerVar }) => totalPowerW + totalReactivePowerVar,
        },
        { id: 'watts-as-va', solve: ({ totalPowerW }) => totalPowerW },
        { id: 'mean-power-factor', solve: (values) => values.totalPowerW / meanPowerFactor(values) },
      ],
    },
    {
      kind: 'numeric',
      id: 'currentA',
      needs: ['apparentPowerVa', 'voltageV'],
      solve: ({ apparentPowerVa, voltageV }) =>
        loadCurrent({ apparentPowerVa, voltageV, phases: 1 }).currentA,
      formula: fraction('apparentPowerVa', 'voltageV'),
      tolerance: { relative: 0.01 },
      source: 'bird',
      slips: [
        {
          id: 'peak-for-rms',
          solve: ({ apparentPowerVa, voltageV }) => (Math.SQRT2 * apparentPowerVa) / voltageV,
        },
      ],
    },
  ],
});
