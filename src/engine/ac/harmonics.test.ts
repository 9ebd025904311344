import { describe, expect, it } from 'vitest';
import { complexMagnitude } from './complex.ts';
import { distortion } from './distortion.ts';
import { harmonicOfSamples } from './harmonic-of-samples.ts';
import { rmsOfHarmonics } from './rms-of-harmonics.ts';
import { rmsOfSamples } from './rms-of-samples.ts';

const turns = (index: number, length: number) => (2 * Math.PI * index) / length;

describe('rmsOfHarmonics', () => {
  it('adds the direct part whole and each peak by half its square', () => {
    expect(rmsOfHarmonics({ mean: -3, peaks: [4 * Math.SQRT2] })).toBeCloseTo(5, 12);
    expect(rmsOfHarmonics({ peaks: [] })).toBe(0);
    expect(() => rmsOfHarmonics({ peaks: [Number.NaN] })).toThrow(RangeError);
    expect(() => rmsOfHarmonics({ mean: Number.NaN, peaks: [] })).toThrow(RangeError);
  });

  it('agrees with samples of the same sum', () => {
    const samples = Array.from(
      { length: 64 },
      (_, index) => 2 + 3 * Math.sin(turns(index, 64)) + Math.cos(5 * turns(index, 64)),
    );
    expect(rmsOfSamples(samples)).toBeCloseTo(rmsOfHarmonics({ mean: 2, peaks: [3, 1] }), 12);
  });
});

describe('rmsOfSamples', () => {
  it('rejects an empty list and a value that is not finite', () => {
    expect(() => rmsOfSamples([])).toThrow(RangeError);
    expect(() => rmsOfSamples([1, Number.POSITIVE_INFINITY])).toThrow(RangeError);
  });
});

describe('harmonicOfSamples', () => {
  it('picks one part out of a sum, with its phase', () => {
    const samples = Array.from(
      { length: 32 },
      (_, index) => 1 + 3 * Math.cos(turns(index, 32)) + 2 * Math.sin(3 * turns(index, 32)),
    );
    const first = harmonicOfSamples(samples, 1);
    expect(first.re).toBeCloseTo(3 / Math.SQRT2, 12);
    expect(first.im).toBeCloseTo(0, 12);
    const third = harmonicOfSamples(samples, 3);
    expect(third.re).toBeCloseTo(0, 12);
    // A sine lags the cosine by a quarter turn.
    expect(third.im).toBeCloseTo(-2 / Math.SQRT2, 12);
    expect(complexMagnitude(harmonicOfSamples(samples, 2))).toBeCloseTo(0, 12);
  });

  it('rejects orders from half the number of samples on, below 1, or not whole', () => {
    const samples = [1, 2, 3, 4];
    expect(() => harmonicOfSamples(samples, 2)).toThrow(/order/);
    expect(() => harmonicOfSamples(samples, 0)).toThrow(/order/);
    expect(() => harmonicOfSamples(samples, 1.5)).toThrow(/order/);
  });
});

describe('distortion', () => {
  it('is none where the fundamental is the whole', () => {
    expect(distortion({ fundamental: 2, total: 2 })).toEqual({ thdRatio: 0, distortionFactorRatio: 1 });
    expect(distortion({ fundamental: 3, total: 5 }).thdRatio).toBeCloseTo(4 / 3, 12);
  });

  it('rejects a whole smaller than its fundamental, and no fundamental', () => {
    expect(() => distortion({ fundamental: 2, total: 1.99 })).toThrow(/total/);
    expect(() => distortion({ fundamental: 0, total: 1 })).toThrow(/fundamental/);
  });
});
