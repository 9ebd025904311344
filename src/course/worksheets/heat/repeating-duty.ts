import { heatTarget, type InverterModel } from '../../../engine/index.ts';
import { fraction, power, product, root, sum } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import { demandFormula, heatQuantities, timeInSeconds } from './heat-formula.ts';
import { bigPartSteps, smallPartSteps } from './part-steps.ts';
import { cycleTime, firstPeak, isTellingCycle, rmsOfCycle } from './repeating-cycle.ts';

interface Values {
  inverter: InverterModel;
  busyA: number;
  busyS: number;
  restA: number;
  restS: number;
  busyDemandRatio: number;
  restDemandRatio: number;
  meanHeatRatio: number;
  smallReachRatio: number;
  smallPeakRatio: number;
  bigReachRatio: number;
  bigPeakRatio: number;
  peakHeatRatio: number;
  verdict: string;
  rmsA: number;
  rmsVerdict: string;
}

const lossColumns = ['busyW', 'restW', 'continuousW'] as const;

export const repeatingDuty = defineWorksheet<Values>({
  id: 'repeating-duty',
  unit: 2,
  givens: {
    inverter: { kind: 'inverter' },
    busyA: { kind: 'number', dimension: 'current', from: 1, to: 500 },
    busyS: { kind: 'number', dimension: 'time', from: 10, to: 7200 },
    restA: { kind: 'number', dimension: 'current', from: 0, to: 500 },
    restS: { kind: 'number', dimension: 'time', from: 10, to: 7200 },
  },
  quantities: {
    ...heatQuantities,
    busyA: { symbol: 'I_busy', dimension: 'current', unit: 'A' },
    busyS: timeInSeconds('t_busy'),
    restA: { symbol: 'I_rest', dimension: 'current', unit: 'A' },
    restS: timeInSeconds('t_rest'),
    busyDemandRatio: { symbol: 'u_busy', dimension: 'ratio' },
    restDemandRatio: { symbol: 'u_rest', dimension: 'ratio' },
    meanHeatRatio: { symbol: 'h_mean', dimension: 'ratio' },
    smallReachRatio: { symbol: 'r_small', dimension: 'ratio' },
    bigReachRatio: { symbol: 'r_big', dimension: 'ratio' },
    smallPeakRatio: { symbol: 'h_small', dimension: 'ratio' },
    bigPeakRatio: { symbol: 'h_big', dimension: 'ratio' },
    peakHeatRatio: { symbol: 'h_peak', dimension: 'ratio' },
    rmsA: { symbol: 'I_rms', dimension: 'current', unit: 'A' },
  },
  accepts: isTellingCycle,
  datasheetLines: ['continuous', 'heatSink', 'warning'],
  tables: (cycle) => {
    const { inverter, busyA, restA } = cycle;
    const { network, continuousLossW } = inverter;
    const loss = (currentA: number): number => heatTarget(inverter, currentA) * continuousLossW;
    return [
      {
        id: 'losses',
        columns: lossColumns.map((id) => ({ id, dimension: 'real-power' as const })),
        rows: [[loss(busyA), loss(restA), continuousLossW]],
      },
      ...(
        [
          ['smallPart', network.fastShareRatio, network.fastTimeConstantS],
          ['bigPart', 1 - network.fastShareRatio, network.slowTimeConstantS],
        ] as const
      ).map(([id, shareRatio, timeConstantS]) => ({
        id,
        columns: [
          { id: 'shareRatio', dimension: 'ratio' as const },
          { id: 'timeConstantS', dimension: 'time' as const },
        ],
        rows: [[shareRatio, timeConstantS]],
      })),
    ];
  },
  steps: [
    {
      kind: 'numeric',
      id: 'busyDemandRatio',
      needs: ['inverter', 'busyA'],
      solve: ({ inverter, busyA }) => heatTarget(inverter, busyA),
      formula: demandFormula('busyA'),
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [
        { id: 'like-the-current', solve: ({ inverter, busyA }) => busyA / inverter.continuousA },
        { id: 'like-the-square', solve: ({ inverter, busyA }) => (busyA / inverter.continuousA) ** 2 },
      ],
    },
    {
      kind: 'numeric',
      id: 'restDemandRatio',
      needs: ['inverter', 'restA'],
      solve: ({ inverter, restA }) => heatTarget(inverter, restA),
      formula: demandFormula('restA'),
      tolerance: { relative: 0.02 },
      source: 'derived',
      slips: [
        { id: 'nothing-at-rest', solve: () => 0 },
        {
          id: 'like-the-current',
          solve: ({ inverter, restA }) => (restA > 0 ? restA / inverter.continuousA : null),
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'meanHeatRatio',
      needs: ['busyDemandRatio', 'busyS', 'restDemandRatio', 'restS'],
      solve: ({ busyDemandRatio, busyS, restDemandRatio, restS }) =>
        (busyDemandRatio * busyS + restDemandRatio * restS) / (busyS + restS),
      formula: fraction(
        sum(product('busyDemandRatio', 'busyS'), product('restDemandRatio', 'restS')),
        cycleTime,
      ),
      tolerance: { relative: 0.02 },
      source: 'gupta-singhal',
      slips: [
        {
          id: 'times-left-out',
          solve: ({ busyDemandRatio, restDemandRatio }) => (busyDemandRatio + restDemandRatio) / 2,
        },
        { id: 'busy-for-ever', solve: ({ busyDemandRatio }) => busyDemandRatio },
        {
          id: 'rest-left-out',
          solve: ({ busyDemandRatio, busyS, restS }) => (busyDemandRatio * busyS) / (busyS + restS),
        },
        {
          id: 'times-swapped',
          solve: ({ busyDemandRatio, busyS, restDemandRatio, restS }) =>
            (busyDemandRatio * restS + restDemandRatio * busyS) / (busyS + restS),
        },
      ],
    },
    ...smallPartSteps<Values>(),
    ...bigPartSteps<Values>(),
    {
      kind: 'numeric',
      id: 'peakHeatRatio',
      needs: [
        'inverter',
        'busyA',
        'restA',
        'busyS',
        'restS',
        'busyDemandRatio',
        'meanHeatRatio',
        'smallPeakRatio',
        'bigPeakRatio',
      ],
      solve: ({ smallPeakRatio, bigPeakRatio }) => smallPeakRatio + bigPeakRatio,
      formula: sum('smallPeakRatio', 'bigPeakRatio'),
      tolerance: { relative: 0.02 },
      source: 'gupta-singhal',
      slips: [
        { id: 'mean-for-peak', solve: ({ meanHeatRatio }) => meanHeatRatio },
        { id: 'busy-for-ever', solve: ({ busyDemandRatio }) => busyDemandRatio },
        { id: 'first-cycle-only', solve: firstPeak },
        { id: 'small-part-alone', solve: ({ smallPeakRatio }) => smallPeakRatio },
      ],
    },
    {
      kind: 'choice',
      id: 'verdict',
      needs: ['inverter', 'busyA', 'busyS', 'restA', 'restS', 'peakHeatRatio'],
      options: ['never', 'warns-only', 'in-the-first-busy-part', 'after-some-cycles'],
      solve: (values) => {
        if (values.peakHeatRatio < values.inverter.datasheet.warnAtHeatRatio) return 'never';
        if (values.peakHeatRatio < 1) return 'warns-only';
        return firstPeak(values) > 1 ? 'in-the-first-busy-part' : 'after-some-cycles';
      },
      source: 'derived',
      slips: [
        { id: 'thinks-never', solve: () => 'never' },
        { id: 'thinks-warns-only', solve: () => 'warns-only' },
        { id: 'thinks-at-once', solve: () => 'in-the-first-busy-part' },
        { id: 'thinks-later', solve: () => 'after-some-cycles' },
      ],
    },
    {
      kind: 'numeric',
      id: 'rmsA',
      needs: ['inverter', 'busyA', 'busyS', 'restA', 'restS'],
      solve: rmsOfCycle,
      formula: root(
        fraction(sum(product(power('busyA', 2), 'busyS'), product(power('restA', 2), 'restS')), cycleTime),
      ),
      tolerance: { relative: 0.015 },
      source: 'theraja',
      slips: [
        {
          id: 'mean-current',
          solve: ({ busyA, busyS, restA, restS }) => (busyA * busyS + restA * restS) / (busyS + restS),
        },
        { id: 'times-left-out', solve: ({ busyA, restA }) => Math.sqrt((busyA ** 2 + restA ** 2) / 2) },
        { id: 'rest-not-counted', solve: ({ busyA }) => busyA },
        {
          id: 'no-root',
          solve: (values) => rmsOfCycle(values) ** 2,
        },
      ],
    },
    {
      kind: 'choice',
      id: 'rmsVerdict',
      needs: ['inverter', 'rmsA', 'peakHeatRatio'],
      options: ['same', 'too-kind', 'too-strict'],
      solve: ({ inverter, rmsA, peakHeatRatio }) => {
        const rmsSaysRuns = rmsA <= inverter.continuousA;
        const runs = peakHeatRatio < 1;
        if (rmsSaysRuns === runs) return 'same';
        return rmsSaysRuns ? 'too-kind' : 'too-strict';
      },
      source: 'derived',
      slips: [
        { id: 'thinks-same', solve: () => 'same' },
        { id: 'thinks-too-kind', solve: () => 'too-kind' },
        { id: 'thinks-too-strict', solve: () => 'too-strict' },
      ],
    },
  ],
});
