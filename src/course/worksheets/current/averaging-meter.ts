import { type WaveShape, waveformFactors } from '../../../engine/index.ts';
import { difference, fraction, product } from '../formula.ts';
import { defineWorksheet } from '../worksheet.ts';

interface Values {
  waveform: string;
  readingA: number;
  allowedErrorRatio: number;
  crestLimit: number;
  formFactor: number;
  meanA: number;
  trueA: number;
  reads: string;
  errorRatio: number;
  meter: string;
}

const shapes: Readonly<Record<string, WaveShape>> = {
  square: { kind: 'square' },
  triangle: { kind: 'triangle' },
  'pulses-half': { kind: 'truncated-cosine', widthRatio: 1 / 2 },
  'pulses-third': { kind: 'truncated-cosine', widthRatio: 1 / 3 },
  'pulses-quarter': { kind: 'truncated-cosine', widthRatio: 1 / 4 },
  'pulses-fifth': { kind: 'truncated-cosine', widthRatio: 1 / 5 },
};

/** The table prints three figures; the key is worked with the same three, as a learner must. */
const asPrinted = (value: number): number => Number(value.toPrecision(3));

/** Of a wave with peak 1, as the table prints it. */
function tabulated(waveform: string): { rms: number; mean: number; crest: number } {
  const shape = shapes[waveform];
  if (!shape)
    throw new RangeError(`waveform: expected one of ${Object.keys(shapes).join(', ')}, found "${waveform}"`);
  const { rms, rectifiedMean, crestFactor } = waveformFactors(shape);
  return { rms: asPrinted(rms), mean: asPrinted(rectifiedMean), crest: asPrinted(crestFactor) };
}

/** What an averaging meter multiplies the mean by, so that a sine wave reads right. */
const SCALE = asPrinted(waveformFactors({ kind: 'sine' }).formFactor);

const unlessNear = (figure: number, key: number, gap: number): number | null =>
  Math.abs(figure - key) > gap ? figure : null;

const formFactorOf = (waveform: string): number => tabulated(waveform).rms / tabulated(waveform).mean;
const errorOf = (readingA: number, trueA: number): number => Math.abs(readingA - trueA) / trueA;
const readsOf = ({ readingA, trueA }: Values): string => (readingA > trueA ? 'high' : 'low');

function meterOf({ errorRatio, allowedErrorRatio, waveform, crestLimit }: Values): string {
  if (errorRatio <= allowedErrorRatio) return 'averaging';
  return tabulated(waveform).crest <= crestLimit ? 'true-rms' : 'other';
}

const meters = ['averaging', 'true-rms', 'other'] as const;

export const averagingMeter = defineWorksheet<Values>({
  id: 'averaging-meter',
  unit: 1,
  givens: {
    waveform: { kind: 'choice', options: Object.keys(shapes) },
    readingA: { kind: 'number', dimension: 'current', from: 0.5, to: 400 },
    allowedErrorRatio: { kind: 'number', dimension: 'ratio', from: 0.01, to: 0.2 },
    crestLimit: { kind: 'number', dimension: 'ratio', from: 1.5, to: 10 },
  },
  quantities: {
    readingA: { symbol: 'I_meter', dimension: 'current', unit: 'A' },
    allowedErrorRatio: { symbol: 'e_allowed', dimension: 'ratio', unit: '%' },
    crestLimit: { symbol: 'CF_max', dimension: 'ratio' },
    formFactor: { symbol: 'FF', dimension: 'ratio' },
    meanA: { symbol: 'I_mean', dimension: 'current', unit: 'A' },
    trueA: { symbol: 'I', dimension: 'current', unit: 'A' },
    errorRatio: { symbol: 'e', dimension: 'ratio', unit: '%' },
  },
  // An error or a crest factor on the edge would make the choice of meter a matter of rounding.
  accepts: ({ waveform, allowedErrorRatio, crestLimit }) =>
    Math.abs(errorOf(SCALE, formFactorOf(waveform)) - allowedErrorRatio) > 0.01 &&
    Math.abs(tabulated(waveform).crest - crestLimit) > 0.1,
  tables: ({ waveform }) => {
    const { rms, mean, crest } = tabulated(waveform);
    return [
      {
        id: 'factors',
        columns: [
          { id: 'mean', dimension: 'ratio' },
          { id: 'rms', dimension: 'ratio' },
          { id: 'crest', dimension: 'ratio' },
        ],
        rows: [[mean, rms, crest]],
      },
    ];
  },
  steps: [
    {
      kind: 'numeric',
      id: 'formFactor',
      needs: ['waveform'],
      solve: ({ waveform }) => formFactorOf(waveform),
      formula: ({ waveform }) => fraction(tabulated(waveform).rms, tabulated(waveform).mean),
      tolerance: { relative: 0.015 },
      source: 'kuphaldt',
      slips: [
        {
          id: 'inverted',
          solve: ({ waveform }) => unlessNear(1 / formFactorOf(waveform), formFactorOf(waveform), 0.03),
        },
        {
          id: 'crest-factor',
          solve: ({ waveform }) => unlessNear(tabulated(waveform).crest, formFactorOf(waveform), 0.06),
        },
        { id: 'sine', solve: ({ waveform }) => unlessNear(SCALE, formFactorOf(waveform), 0.03) },
      ],
    },
    {
      kind: 'numeric',
      id: 'meanA',
      needs: ['readingA'],
      solve: ({ readingA }) => readingA / SCALE,
      formula: fraction('readingA', SCALE),
      tolerance: { relative: 0.01 },
      source: 'kuphaldt',
      slips: [
        { id: 'reading-as-mean', solve: ({ readingA }) => readingA },
        { id: 'multiplied', solve: ({ readingA }) => readingA * SCALE },
        { id: 'root-two', solve: ({ readingA }) => readingA / Math.SQRT2 },
      ],
    },
    {
      kind: 'numeric',
      id: 'trueA',
      needs: ['meanA', 'formFactor', 'waveform', 'readingA'],
      solve: ({ meanA, formFactor }) => meanA * formFactor,
      formula: product('meanA', 'formFactor'),
      tolerance: { relative: 0.015 },
      source: 'kuphaldt',
      slips: [
        // Divided or not, a square wave gives the same.
        {
          id: 'reading-divided',
          solve: ({ readingA, formFactor }) => unlessNear(readingA / formFactor, readingA, 0.03 * readingA),
        },
        {
          id: 'peak',
          solve: ({ meanA, formFactor, waveform }) => {
            const rmsA = meanA * formFactor;
            return unlessNear(rmsA * tabulated(waveform).crest, rmsA, 0.03 * rmsA);
          },
        },
      ],
    },
    {
      kind: 'choice',
      id: 'reads',
      needs: ['readingA', 'trueA'],
      options: ['high', 'low'],
      solve: readsOf,
      source: 'kuphaldt',
      slips: [{ id: 'wrong-way', solve: (values) => (readsOf(values) === 'high' ? 'low' : 'high') }],
    },
    {
      kind: 'numeric',
      id: 'errorRatio',
      needs: ['readingA', 'trueA'],
      solve: ({ readingA, trueA }) => errorOf(readingA, trueA),
      formula: ({ readingA, trueA }) =>
        readingA > trueA
          ? fraction(difference('readingA', 'trueA'), 'trueA')
          : fraction(difference('trueA', 'readingA'), 'trueA'),
      tolerance: { absolute: 0.004, relative: 0.02 },
      source: 'derived',
      slips: [
        {
          id: 'of-the-reading',
          solve: ({ readingA, trueA }) =>
            unlessNear(Math.abs(readingA - trueA) / readingA, errorOf(readingA, trueA), 0.006),
        },
        {
          id: 'reading-over-true',
          solve: ({ readingA, trueA }) => unlessNear(readingA / trueA, errorOf(readingA, trueA), 0.02),
        },
        { id: 'true-over-reading', solve: ({ readingA, trueA }) => trueA / readingA },
      ],
    },
    {
      kind: 'choice',
      id: 'meter',
      needs: ['errorRatio', 'allowedErrorRatio', 'waveform', 'crestLimit'],
      options: meters,
      solve: meterOf,
      source: 'common-practice',
      slips: meters.map((option) => ({
        id: option,
        solve: (values: Values) => (meterOf(values) === option ? null : option),
      })),
    },
  ],
});
