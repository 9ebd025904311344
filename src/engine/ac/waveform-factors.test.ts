import { describe, expect, it } from 'vitest';
import { factorsOfSamples } from './factors-of-samples.ts';
import type { WaveFactors } from './factors-of-values.ts';
import { type WaveShape, waveformFactors } from './waveform-factors.ts';

const count = 36_000;

/** The shape drawn independently of the closed forms: value at a phase from 0 to 1. */
function drawn(shape: WaveShape, phase: number): number {
  const sine = Math.sin(2 * Math.PI * phase);
  switch (shape.kind) {
    case 'sine':
      return sine;
    case 'square':
      return phase < 0.5 ? 1 : -1;
    case 'triangle':
      return 4 * Math.abs(phase - 0.5) - 1;
    case 'half-wave':
      return Math.max(0, sine);
    case 'full-wave':
      return Math.abs(sine);
    case 'pulse':
      return phase < shape.dutyRatio ? 1 : 0;
    case 'truncated-cosine': {
      const inHalf = ((phase * 2) % 1) - 0.5;
      const height =
        Math.abs(inHalf) < shape.widthRatio / 2 ? Math.cos((Math.PI * inHalf) / shape.widthRatio) : 0;
      return phase < 0.5 ? height : -height;
    }
  }
}

const shapes: WaveShape[] = [
  { kind: 'sine' },
  { kind: 'square' },
  { kind: 'triangle' },
  { kind: 'half-wave' },
  { kind: 'full-wave' },
  { kind: 'pulse', dutyRatio: 0.25 },
  { kind: 'pulse', dutyRatio: 0.7 },
  { kind: 'truncated-cosine', widthRatio: 0.4 },
  { kind: 'truncated-cosine', widthRatio: 1 },
];

describe('waveformFactors', () => {
  for (const shape of shapes) {
    for (const acCoupled of [false, true]) {
      it(`agrees with samples of ${JSON.stringify(shape)}${acCoupled ? ', a.c.-coupled' : ''}`, () => {
        // Half a step of offset makes the sampled means those of the midpoint rule.
        const samples = Array.from({ length: count }, (_, index) => drawn(shape, (index + 0.5) / count));
        const exact = waveformFactors(shape, { acCoupled });
        const sampled = factorsOfSamples(samples, { acCoupled });
        for (const key of Object.keys(exact) as (keyof WaveFactors)[])
          expect(exact[key]).toBeCloseTo(sampled[key], 3);
      });
    }
  }

  it('accepts a pulse that is always on, unless its direct part is blocked', () => {
    expect(waveformFactors({ kind: 'pulse', dutyRatio: 1 }).crestFactor).toBe(1);
    expect(() => waveformFactors({ kind: 'pulse', dutyRatio: 1 }, { acCoupled: true })).toThrow(/rms/);
  });

  it('rejects ratios outside 0 to 1', () => {
    for (const ratio of [0, -0.1, 1.01, Number.NaN]) {
      expect(() => waveformFactors({ kind: 'pulse', dutyRatio: ratio })).toThrow(/dutyRatio/);
      expect(() => waveformFactors({ kind: 'truncated-cosine', widthRatio: ratio })).toThrow(/widthRatio/);
    }
  });
});

describe('factorsOfSamples', () => {
  it('gives hand-worked figures for a short list', () => {
    expect(factorsOfSamples([2, 0, 0, 0])).toMatchObject({
      mean: 0.5,
      rms: 1,
      rectifiedMean: 0.5,
      peak: 2,
      formFactor: 2,
    });
    // 1.5, −0.5, −0.5, −0.5: squares 2.25 + 3 · 0.25 = 3, mean of sizes 3/4
    expect(factorsOfSamples([2, 0, 0, 0], { acCoupled: true })).toMatchObject({
      mean: 0,
      rectifiedMean: 0.75,
      peak: 1.5,
    });
    expect(factorsOfSamples([2, 0, 0, 0], { acCoupled: true }).rms).toBeCloseTo(Math.sqrt(0.75), 12);
  });

  it('rejects nothing to measure', () => {
    expect(() => factorsOfSamples([])).toThrow(RangeError);
    expect(() => factorsOfSamples([0, 0])).toThrow(RangeError);
    expect(() => factorsOfSamples([5, 5], { acCoupled: true })).toThrow(RangeError);
    expect(() => factorsOfSamples([1, Number.NaN])).toThrow(RangeError);
  });
});
