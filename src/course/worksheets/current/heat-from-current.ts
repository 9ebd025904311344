import { loadCurrent, powerTriangle } from '../../../engine/index.ts';
import { fraction, power, product } from '../formula.ts';
import { defineWorksheet, type NumericStep } from '../worksheet.ts';

interface Values {
  firstName: string;
  firstPowerFactor: number;
  secondName: string;
  secondPowerFactor: number;
  realPowerW: number;
  voltageV: number;
  firstCurrentA: number;
  secondCurrentA: number;
  currentRatio: number;
  heatRatio: number;
  warmer: string;
}

const warmerOptions = ['first', 'second', 'same'] as const;
const warmerOf = ({ heatRatio }: Values): string => (heatRatio > 1 ? 'second' : 'first');

/** Both currents are worked in the same way and go wrong in the same ways. */
function currentStep(
  id: 'firstCurrentA' | 'secondCurrentA',
  powerFactorId: 'firstPowerFactor' | 'secondPowerFactor',
): NumericStep<Values> {
  const wattsOverVolts = ({ realPowerW, voltageV }: Values): number => realPowerW / voltageV;
  return {
    kind: 'numeric',
    id,
    needs: ['realPowerW', powerFactorId, 'voltageV'],
    solve: (values) =>
      loadCurrent({
        apparentPowerVa: powerTriangle({
          realPowerW: values.realPowerW,
          powerFactor: values[powerFactorId],
        }).apparentPowerVa,
        voltageV: values.voltageV,
        phases: 1,
      }).currentA,
    formula: fraction('realPowerW', product(powerFactorId, 'voltageV')),
    tolerance: { relative: 0.015 },
    source: 'bird',
    slips: [
      {
        id: 'watts-over-volts',
        solve: (values) => (values[powerFactorId] < 1 ? wattsOverVolts(values) : null),
      },
      {
        id: 'times-power-factor',
        solve: (values) =>
          values[powerFactorId] < 1 ? wattsOverVolts(values) * values[powerFactorId] : null,
      },
    ],
  };
}

export const heatFromCurrent = defineWorksheet<Values>({
  id: 'heat-from-current',
  unit: 1,
  givens: {
    firstName: { kind: 'text' },
    firstPowerFactor: { kind: 'number', dimension: 'ratio', from: 0.3, to: 1 },
    secondName: { kind: 'text' },
    secondPowerFactor: { kind: 'number', dimension: 'ratio', from: 0.3, to: 1 },
    realPowerW: { kind: 'number', dimension: 'real-power', from: 50, to: 20_000 },
    voltageV: { kind: 'number', dimension: 'voltage', from: 100, to: 260 },
  },
  quantities: {
    firstPowerFactor: { symbol: 'PF_1', dimension: 'ratio' },
    secondPowerFactor: { symbol: 'PF_2', dimension: 'ratio' },
    realPowerW: { symbol: 'P', dimension: 'real-power', unit: 'W' },
    voltageV: { symbol: 'U', dimension: 'voltage', unit: 'V' },
    firstCurrentA: { symbol: 'I_1', dimension: 'current', unit: 'A' },
    secondCurrentA: { symbol: 'I_2', dimension: 'current', unit: 'A' },
    currentRatio: { symbol: 'r', dimension: 'ratio' },
    heatRatio: { symbol: 'h', dimension: 'ratio' },
  },
  // Too near to each other, nothing is to be seen; at twice the current, squared and doubled would be the same figure.
  accepts: ({ firstPowerFactor, secondPowerFactor }) => {
    const ratio = firstPowerFactor / secondPowerFactor;
    return Math.abs(Math.log(ratio)) > 0.15 && Math.abs(ratio - 2) > 0.1;
  },
  steps: [
    currentStep('firstCurrentA', 'firstPowerFactor'),
    currentStep('secondCurrentA', 'secondPowerFactor'),
    {
      kind: 'numeric',
      id: 'currentRatio',
      needs: ['firstCurrentA', 'secondCurrentA'],
      solve: ({ firstCurrentA, secondCurrentA }) => secondCurrentA / firstCurrentA,
      formula: fraction('secondCurrentA', 'firstCurrentA'),
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [
        { id: 'inverted', solve: ({ firstCurrentA, secondCurrentA }) => firstCurrentA / secondCurrentA },
        { id: 'watts-compared', solve: () => 1 },
        {
          id: 'share-more',
          solve: ({ firstCurrentA, secondCurrentA }) => Math.abs(secondCurrentA / firstCurrentA - 1),
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'heatRatio',
      needs: ['currentRatio'],
      solve: ({ currentRatio }) => currentRatio ** 2,
      formula: power('currentRatio', 2),
      tolerance: { relative: 0.03 },
      source: 'derived',
      slips: [
        { id: 'not-squared', solve: ({ currentRatio }) => currentRatio },
        { id: 'doubled', solve: ({ currentRatio }) => 2 * currentRatio },
        { id: 'square-root', solve: ({ currentRatio }) => Math.sqrt(currentRatio) },
      ],
    },
    {
      kind: 'choice',
      id: 'warmer',
      needs: ['heatRatio'],
      options: warmerOptions,
      solve: warmerOf,
      source: 'common-practice',
      slips: [
        { id: 'same-watts', solve: () => 'same' },
        {
          id: 'less-current',
          solve: (values) => (warmerOf(values) === 'first' ? 'second' : 'first'),
        },
      ],
    },
  ],
});
