import { rmsOfSegments } from '../../../engine/index.ts';
import { fraction, power, product, root, sum } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';

interface Segment {
  durationS: number;
  currentA: number;
}

interface Values {
  segments: readonly Segment[];
  fastTimeConstantS: number;
  cycleS: number;
  meanA: number;
  rmsA: number;
  heatRatio: number;
  use: string;
}

const total = (segments: readonly Segment[], of: (segment: Segment) => number): number =>
  segments.reduce((whole, segment) => whole + of(segment), 0);

const busy = (segments: readonly Segment[]): Segment[] => segments.filter((segment) => segment.currentA > 0);
const hasRest = (segments: readonly Segment[]): boolean => busy(segments).length < segments.length;
const time = (segment: Segment): number => segment.durationS;
const charge = (segment: Segment): number => segment.durationS * segment.currentA;
const heating = (segment: Segment): number => segment.durationS * segment.currentA ** 2;
const unlessNear = (figure: number, other: number): number | null =>
  Math.abs(figure / other - 1) > 0.04 ? figure : null;

const peakA = (segments: readonly Segment[]): number =>
  Math.max(...segments.map((segment) => segment.currentA));

/** One tenth: the ripple of the fast part's heat then stays below a few per cent of its mean. */
const SHORT_CYCLE_RATIO = 0.1;
const useOf = ({ cycleS, fastTimeConstantS }: Values): string =>
  cycleS <= SHORT_CYCLE_RATIO * fastTimeConstantS ? 'rms-for-all' : 'each-segment';

export const rmsOfCycle = defineWorksheet<Values>({
  id: 'rms-of-cycle',
  unit: 1,
  givens: {
    segments: {
      kind: 'list',
      of: {
        durationS: { kind: 'number', dimension: 'time', from: 0.1, to: 7200 },
        currentA: { kind: 'number', dimension: 'current', from: 0, to: 200 },
      },
      from: 2,
      to: 4,
    },
    fastTimeConstantS: { kind: 'number', dimension: 'time', from: 1, to: 3600 },
  },
  quantities: {
    'segments.*.durationS': { symbol: 't_*', dimension: 'time', unit: 's' },
    'segments.*.currentA': { symbol: 'I_*', dimension: 'current', unit: 'A' },
    fastTimeConstantS: { symbol: 'τ_fast', dimension: 'time', unit: 's' },
    cycleS: { symbol: 'T', dimension: 'time', unit: 's' },
    meanA: { symbol: 'I_mean', dimension: 'current', unit: 'A' },
    rmsA: { symbol: 'I_rms', dimension: 'current', unit: 'A' },
    heatRatio: { symbol: 'h', dimension: 'ratio' },
  },
  // Mean and r.m.s. must lie apart, and the cycle be clearly short or clearly long.
  accepts: ({ segments, fastTimeConstantS }) => {
    const cycleS = total(segments, time);
    const meanA = total(segments, charge) / cycleS;
    const rmsA = Math.sqrt(total(segments, heating) / cycleS);
    const ratio = cycleS / fastTimeConstantS;
    return rmsA / meanA > 1.05 && (ratio < 0.8 * SHORT_CYCLE_RATIO || ratio > 3 * SHORT_CYCLE_RATIO);
  },
  steps: [
    {
      kind: 'numeric',
      id: 'cycleS',
      needs: ['segments'],
      solve: ({ segments }) => total(segments, time),
      formula: ({ segments }) => sum(...segments.map((_, place) => `segments.${place}.durationS`)),
      tolerance: { relative: 0.01 },
      source: 'derived',
      slips: [
        {
          id: 'rest-left-out',
          solve: ({ segments }) => (hasRest(segments) ? total(busy(segments), time) : null),
        },
        {
          id: 'working-part-only',
          solve: ({ segments }) =>
            segments.length > 2
              ? (segments.find((segment) => segment.currentA === peakA(segments))?.durationS ?? null)
              : null,
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'meanA',
      needs: ['segments', 'cycleS'],
      solve: ({ segments, cycleS }) => total(segments, charge) / cycleS,
      formula: ({ segments }) =>
        fraction(
          sum(
            ...segments.map((_, place) =>
              product(`segments.${place}.currentA`, `segments.${place}.durationS`),
            ),
          ),
          'cycleS',
        ),
      tolerance: { relative: 0.015 },
      source: 'derived',
      slips: [
        {
          id: 'times-left-out',
          solve: ({ segments, cycleS }) =>
            unlessNear(
              total(segments, (segment) => segment.currentA) / segments.length,
              total(segments, charge) / cycleS,
            ),
        },
        { id: 'peak', solve: ({ segments }) => peakA(segments) },
      ],
    },
    {
      kind: 'numeric',
      id: 'rmsA',
      needs: ['segments', 'cycleS', 'meanA'],
      // The learner's own cycle time stands in for the sum of the segments where it differs.
      solve: ({ segments, cycleS }) =>
        rmsOfSegments(segments.map(({ durationS, currentA }) => ({ durationS, from: currentA }))) *
        Math.sqrt(total(segments, time) / cycleS),
      formula: ({ segments }) =>
        root(
          fraction(
            sum(
              ...segments.map((_, place) =>
                product(power(`segments.${place}.currentA`, 2), `segments.${place}.durationS`),
              ),
            ),
            'cycleS',
          ),
        ),
      tolerance: { relative: 0.015 },
      source: 'theraja',
      slips: [
        { id: 'mean', solve: ({ meanA }) => meanA },
        { id: 'peak', solve: ({ segments }) => peakA(segments) },
        {
          id: 'root-forgotten',
          solve: ({ segments, cycleS }) => total(segments, heating) / cycleS,
        },
        {
          id: 'root-without-square',
          solve: ({ segments, cycleS }) => Math.sqrt(total(segments, charge) / cycleS),
        },
        {
          id: 'times-left-out',
          solve: ({ segments, cycleS }) =>
            unlessNear(
              Math.sqrt(total(segments, (segment) => segment.currentA ** 2) / segments.length),
              Math.sqrt(total(segments, heating) / cycleS),
            ),
        },
      ],
    },
    {
      kind: 'numeric',
      id: 'heatRatio',
      needs: ['rmsA', 'meanA'],
      solve: ({ rmsA, meanA }) => (rmsA / meanA) ** 2,
      formula: power(fraction('rmsA', 'meanA'), 2),
      tolerance: { relative: 0.03 },
      source: 'derived',
      slips: [
        { id: 'not-squared', solve: ({ rmsA, meanA }) => rmsA / meanA },
        { id: 'inverted', solve: ({ rmsA, meanA }) => (meanA / rmsA) ** 2 },
        {
          id: 'share-more',
          solve: ({ rmsA, meanA }) => {
            const ratio = rmsA / meanA;
            const more = ratio ** 2 - 1;
            // Near the golden ratio, one less than the square is the ratio itself.
            const apart = [ratio, ratio ** -2].every((other) => unlessNear(more, other) !== null);
            return more > 0 && apart ? more : null;
          },
        },
      ],
    },
    {
      kind: 'choice',
      id: 'use',
      needs: ['cycleS', 'fastTimeConstantS'],
      options: ['mean-for-all', 'rms-for-all', 'each-segment', 'peak-for-all'],
      solve: useOf,
      source: 'derived',
      slips: [
        { id: 'mean-for-all', solve: () => 'mean-for-all' },
        { id: 'peak-for-all', solve: () => 'peak-for-all' },
        {
          id: 'cycle-too-long',
          solve: (values) => (useOf(values) === 'each-segment' ? 'rms-for-all' : null),
        },
        {
          id: 'cycle-short-enough',
          solve: (values) => (useOf(values) === 'rms-for-all' ? 'each-segment' : null),
        },
      ],
    },
  ],
});
