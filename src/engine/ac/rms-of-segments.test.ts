import { describe, expect, it } from 'vitest';
import { rmsOfSegments } from './rms-of-segments.ts';

describe('rmsOfSegments', () => {
  it('weighs squares by time', () => {
    // 3² for three quarters and 5² for one: (27 + 25)/4 = 13
    expect(
      rmsOfSegments([
        { durationS: 3, from: 3 },
        { durationS: 1, from: 5 },
      ]),
    ).toBeCloseTo(Math.sqrt(13), 12);
  });

  it('gives a ramp from nought a third of its peak squared, and one through nought the same', () => {
    expect(rmsOfSegments([{ durationS: 7, from: 0, to: 6 }])).toBeCloseTo(Math.sqrt(12), 12);
    expect(rmsOfSegments([{ durationS: 7, from: -6, to: 6 }])).toBeCloseTo(Math.sqrt(12), 12);
    expect(rmsOfSegments([{ durationS: 7, from: 2, to: 4 }])).toBeCloseTo(Math.sqrt(28 / 3), 12);
  });

  it('ignores segments without length', () => {
    expect(
      rmsOfSegments([
        { durationS: 0, from: 99 },
        { durationS: 2, from: 4 },
      ]),
    ).toBe(4);
  });

  it('rejects an empty cycle, a negative duration and values that are not finite', () => {
    expect(() => rmsOfSegments([])).toThrow(RangeError);
    expect(() => rmsOfSegments([{ durationS: 0, from: 1 }])).toThrow(RangeError);
    expect(() =>
      rmsOfSegments([
        { durationS: 5, from: 1 },
        { durationS: -1, from: 1 },
      ]),
    ).toThrow(/segments\[1\]\.durationS/);
    expect(() => rmsOfSegments([{ durationS: 5, from: Number.NaN }])).toThrow(/segments\[0\]\.from/);
    expect(() => rmsOfSegments([{ durationS: 5, from: 1, to: Number.POSITIVE_INFINITY }])).toThrow(
      /segments\[0\]\.to/,
    );
  });
});
