import { fraction, product } from '../../src/course/worksheets/formula.ts';
import { defineWorksheet, type Worksheet } from '../../src/course/worksheets/worksheet.ts';

interface SampleValues {
  powerW: number;
  voltageV: number;
  currentA: number;
  heatRatio: number;
  verdict: string;
  sequence: readonly string[];
}

/** A small worksheet with every kind of step, for tests of marking and diagnosis. */
export const sampleWorksheet: Worksheet = defineWorksheet<SampleValues>({
  id: 'sample',
  unit: 1,
  givens: {
    powerW: { kind: 'number', dimension: 'real-power', from: 1, to: 10_000 },
    voltageV: { kind: 'number', dimension: 'voltage', from: 1, to: 1000 },
  },
  quantities: {
    powerW: { symbol: 'P', dimension: 'real-power' },
    voltageV: { symbol: 'U', dimension: 'voltage' },
    currentA: { symbol: 'I', dimension: 'current', unit: 'A' },
    heatRatio: { symbol: 'h', dimension: 'ratio' },
  },
  steps: [
    {
      kind: 'numeric',
      id: 'currentA',
      needs: ['powerW', 'voltageV'],
      solve: ({ powerW, voltageV }) => powerW / voltageV,
      formula: fraction('powerW', 'voltageV'),
      tolerance: { relative: 0.01 },
      source: 'derived',
      slips: [
        { id: 'three-phase', solve: ({ powerW, voltageV }) => powerW / voltageV / Math.sqrt(3) },
        { id: 'upside-down', solve: ({ powerW, voltageV }) => voltageV / powerW },
        { id: 'same-as-upside-down', solve: ({ powerW, voltageV }) => voltageV / powerW },
        { id: 'never-here', solve: () => null },
      ],
    },
    {
      kind: 'numeric',
      id: 'heatRatio',
      needs: ['currentA'],
      solve: ({ currentA }) => (currentA / 10) ** 2,
      formula: product(fraction('currentA', 10), fraction('currentA', 10)),
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [{ id: 'not-squared', solve: ({ currentA }) => currentA / 10 }],
    },
    {
      kind: 'choice',
      id: 'verdict',
      needs: ['heatRatio'],
      options: ['holds', 'stops'],
      solve: ({ heatRatio }) => (heatRatio > 1 ? 'stops' : 'holds'),
      source: 'derived',
      slips: [{ id: 'turned-round', solve: ({ heatRatio }) => (heatRatio > 1 ? 'holds' : 'stops') }],
    },
    {
      kind: 'ordering',
      id: 'sequence',
      needs: [],
      options: ['wait', 'stop', 'restart'],
      solve: () => ['stop', 'wait', 'restart'],
      source: 'derived',
      slips: [{ id: 'restart-first', solve: () => ['stop', 'restart', 'wait'] }],
    },
  ],
});

/** 2300 W at 230 V: 10 A, heat 1, holds. */
export const sampleGivens = { powerW: 2300, voltageV: 230 };
export const sampleKey = {
  currentA: '10 A',
  heatRatio: '1',
  verdict: 'holds',
  sequence: 'stop>wait>restart',
};
