import {
  type DutySegment,
  dutyHeat,
  heatAfter,
  heatTarget,
  type InverterModel,
  rmsOfSegments,
  settledHeat,
} from '../../../engine/index.ts';
import type { Formula } from '../formula.ts';
import { difference, exp, fraction, power, product, root, sum } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';
import { areApart } from './are-apart.ts';
import { demandFormula, fastShare, fastTime, heatQuantities, slowShare, slowTime } from './heat-formula.ts';

interface Values {
  inverter: InverterModel;
  busyA: number;
  busyS: number;
  restA: number;
  restS: number;
  busyDemandRatio: number;
  restDemandRatio: number;
  meanHeatRatio: number;
  peakHeatRatio: number;
  verdict: string;
  rmsA: number;
  rmsVerdict: string;
}

type Cycle = Pick<Values, 'inverter' | 'busyA' | 'busyS' | 'restA' | 'restS'>;

const segmentsOf = ({ busyA, busyS, restA, restS }: Cycle): DutySegment[] => [
  { currentA: busyA, durationS: busyS },
  { currentA: restA, durationS: restS },
];

const rmsOf = ({ busyA, busyS, restA, restS }: Cycle): number =>
  rmsOfSegments([
    { from: busyA, durationS: busyS },
    { from: restA, durationS: restS },
  ]);

/** Heat at the end of the first busy part, started warm from no load. */
const firstPeak = ({ inverter, busyA, busyS }: Cycle): number => {
  const heat = heatAfter({
    model: inverter,
    heat: settledHeat(inverter, 0),
    currentA: busyA,
    durationS: busyS,
  });
  return heat.fast + heat.slow;
};

/** Settled peak of one node, as a share of its swing between rest and busy demand. */
const peakShare = (timeConstantS: number, { busyS, restS }: Cycle): number =>
  Math.expm1(-busyS / timeConstantS) / Math.expm1(-(busyS + restS) / timeConstantS);

/** The settled peak for demands that may be the learner's own. Equal to `dutyHeat` for the right ones: a test holds it. */
function peakFor(values: Cycle & Pick<Values, 'busyDemandRatio' | 'restDemandRatio'>): number {
  const { fastShareRatio, fastTimeConstantS, slowTimeConstantS } = values.inverter.network;
  const share =
    fastShareRatio * peakShare(fastTimeConstantS, values) +
    (1 - fastShareRatio) * peakShare(slowTimeConstantS, values);
  return values.restDemandRatio + (values.busyDemandRatio - values.restDemandRatio) * share;
}

const risen = (time: Formula, timeConstant: string): Formula =>
  difference(1, fraction(1, exp(fraction(time, timeConstant))));
const cycleTime = sum('busyS', 'restS');
const nodeShare = (timeConstant: string): Formula =>
  fraction(risen(sum('busyS'), timeConstant), risen(cycleTime, timeConstant));

const lossColumns = ['busyW', 'restW', 'continuousW'] as const;
const nodeColumns = ['fastShareRatio', 'fastTimeConstantS', 'slowShareRatio', 'slowTimeConstantS'] as const;

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
    busyS: { symbol: 't_busy', dimension: 'time' },
    restA: { symbol: 'I_rest', dimension: 'current', unit: 'A' },
    restS: { symbol: 't_rest', dimension: 'time' },
    busyDemandRatio: { symbol: 'u_busy', dimension: 'ratio' },
    restDemandRatio: { symbol: 'u_rest', dimension: 'ratio' },
    meanHeatRatio: { symbol: 'h_mean', dimension: 'ratio' },
    peakHeatRatio: { symbol: 'h_peak', dimension: 'ratio' },
    rmsA: { symbol: 'I_rms', dimension: 'current', unit: 'A' },
  },
  accepts: (cycle) => {
    const { inverter, busyA, busyS, restA, restS } = cycle;
    const { peakHeatRatio, meanHeatRatio } = dutyHeat({ model: inverter, segments: segmentsOf(cycle) });
    const apart = (left: number, right: number): boolean => areApart([left, right], 0.04);
    const byTime = (busy: number, rest: number): number => (busy * busyS + rest * restS) / (busyS + restS);
    const busyDemand = heatTarget(inverter, busyA);
    const restDemand = heatTarget(inverter, restA);
    return (
      busyA > inverter.continuousA * 1.05 &&
      busyA < inverter.limitA * 0.98 &&
      restA < inverter.continuousA * 0.8 &&
      apart(peakHeatRatio, 1) &&
      apart(peakHeatRatio, inverter.datasheet.warnAtHeatRatio) &&
      apart(firstPeak(cycle), 1) &&
      apart(rmsOf(cycle), inverter.continuousA) &&
      apart(busyS, restS) &&
      areApart([restDemand, restA / inverter.continuousA], 0.025) &&
      areApart(
        [
          meanHeatRatio,
          (busyDemand + restDemand) / 2,
          byTime(busyDemand, 0),
          busyDemand + restDemand - meanHeatRatio,
          busyDemand,
        ],
        0.025,
      ) &&
      areApart([peakHeatRatio, meanHeatRatio, firstPeak(cycle), busyDemand], 0.03) &&
      areApart([rmsOf(cycle), byTime(busyA, restA), Math.sqrt((busyA ** 2 + restA ** 2) / 2), busyA], 0.02)
    );
  },
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
      {
        id: 'nodes',
        columns: nodeColumns.map((id) => ({
          id,
          dimension: id.endsWith('S') ? ('time' as const) : ('ratio' as const),
        })),
        rows: [
          [
            network.fastShareRatio,
            network.fastTimeConstantS,
            1 - network.fastShareRatio,
            network.slowTimeConstantS,
          ],
        ],
      },
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
        'restDemandRatio',
        'meanHeatRatio',
      ],
      solve: peakFor,
      formula: sum(
        'restDemandRatio',
        product(
          difference('busyDemandRatio', 'restDemandRatio'),
          sum(product(fastShare, nodeShare(fastTime)), product(slowShare, nodeShare(slowTime))),
        ),
      ),
      tolerance: { relative: 0.02 },
      source: 'gupta-singhal',
      slips: [
        { id: 'mean-for-peak', solve: ({ meanHeatRatio }) => meanHeatRatio },
        { id: 'busy-for-ever', solve: ({ busyDemandRatio }) => busyDemandRatio },
        { id: 'first-cycle-only', solve: firstPeak },
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
      solve: rmsOf,
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
          solve: (values) => rmsOf(values) ** 2,
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
