import { describe, expect, it } from 'vitest';
import { stepped } from './stepped.ts';

describe('stepped', () => {
  it('returns values of the raster without binary noise', () => {
    expect(stepped({ value: 0.1 + 0.2, min: 0, max: 1, step: 0.1 })).toBe(0.3);
    expect(stepped({ value: 7.4, min: 2, max: 20, step: 5 })).toBe(7);
  });
  it('keeps within the bounds', () => {
    expect(stepped({ value: 99, min: 0, max: 30, step: 4 })).toBe(30);
    expect(stepped({ value: -9, min: 3, max: 30, step: 4 })).toBe(3);
    expect(stepped({ value: Number.POSITIVE_INFINITY, min: 0, max: 30, step: 4 })).toBe(30);
  });
  it('returns the least value for what is no number', () => {
    expect(stepped({ value: Number.NaN, min: 3, max: 30, step: 1 })).toBe(3);
  });
});
