import { loadCurrent, powerTriangle } from '../../../engine/index.ts';
import { fraction } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';

interface Values {
  realPowerW: number;
  powerFactor: number;
  voltageV: number;
  apparentPowerVa: number;
  currentA: number;
}

export const currentFromNameplate = defineWorksheet<Values>({
  id: 'current-from-nameplate',
  unit: 1,
  givens: {
    realPowerW: { kind: 'number', dimension: 'real-power', from: 10, to: 50_000 },
    powerFactor: { kind: 'number', dimension: 'ratio', from: 0.3, to: 1 },
    voltageV: { kind: 'number', dimension: 'voltage', from: 100, to: 260 },
  },
  quantities: {
    realPowerW: { symbol: 'P', dimension: 'real-power' },
    powerFactor: { symbol: 'PF', dimension: 'ratio' },
    voltageV: { symbol: 'U', dimension: 'voltage', unit: 'V' },
    apparentPowerVa: { symbol: 'S', dimension: 'apparent-power' },
    currentA: { symbol: 'I', dimension: 'current', unit: 'A' },
  },
  accepts: ({ powerFactor }) => powerFactor < 0.97,
  steps: [
    {
      kind: 'numeric',
      id: 'apparentPowerVa',
      needs: ['realPowerW', 'powerFactor'],
      solve: ({ realPowerW, powerFactor }) => powerTriangle({ realPowerW, powerFactor }).apparentPowerVa,
      formula: fraction('realPowerW', 'powerFactor'),
      tolerance: { relative: 0.015 },
      source: 'bird',
      slips: [
        { id: 'watts-as-va', solve: ({ realPowerW }) => realPowerW },
        { id: 'times-power-factor', solve: ({ realPowerW, powerFactor }) => realPowerW * powerFactor },
        {
          id: 'reactive-power',
          solve: ({ realPowerW, powerFactor }) => powerTriangle({ realPowerW, powerFactor }).reactivePowerVar,
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'currentA',
      needs: ['apparentPowerVa', 'voltageV'],
      solve: ({ apparentPowerVa, voltageV }) =>
        loadCurrent({ apparentPowerVa, voltageV, phases: 1 }).currentA,
      formula: fraction('apparentPowerVa', 'voltageV'),
      tolerance: { relative: 0.015 },
      source: 'bird',
      slips: [
        {
          id: 'three-phase-root',
          solve: ({ apparentPowerVa, voltageV }) => apparentPowerVa / (Math.sqrt(3) * voltageV),
        },
        {
          id: 'peak-for-rms',
          solve: ({ apparentPowerVa, voltageV }) => (Math.SQRT2 * apparentPowerVa) / voltageV,
        },
        {
          id: 'volts-over-volt-amperes',
          solve: ({ apparentPowerVa, voltageV }) => voltageV / apparentPowerVa,
        },
      ],
    },
  ],
});
