import { describe, expect, it } from 'vitest';
import { linearTicks, logTimeTicks, roundUp, timeTicks } from './ticks.ts';

describe('linearTicks', () => {
  it('returns multiples of 1, 2 or 5 times a power of ten', () => {
    expect(linearTicks({ from: 0, to: 33, most: 8 })).toEqual([0, 5, 10, 15, 20, 25, 30]);
    expect(linearTicks({ from: 6, to: 32.5, most: 4 })).toEqual([10, 20, 30]);
    expect(linearTicks({ from: 0, to: 1, most: 11 })).toEqual([
      0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1,
    ]);
  });
  it('keeps to the number asked for over many ranges', () => {
    for (const to of [0.07, 0.9, 1.01, 3.3, 7, 12, 24, 99, 101, 4321]) {
      for (const most of [2, 3, 5, 8, 11]) {
        const ticks = linearTicks({ from: 0, to, most });
        expect(ticks.length).toBeLessThanOrEqual(most);
        expect(ticks.length).toBeGreaterThanOrEqual(1);
        expect(ticks.at(-1)).toBeLessThanOrEqual(to);
      }
    }
  });
  it('passes through nought on a range with both signs', () => {
    expect(linearTicks({ from: -14, to: 14, most: 7 })).toEqual([-10, -5, 0, 5, 10]);
  });
  it('returns the one value of a range of no length', () => {
    expect(linearTicks({ from: 4, to: 4, most: 5 })).toEqual([4]);
  });
});

describe('timeTicks', () => {
  it('returns quarters and halves of hours rather than thousands of seconds', () => {
    expect(timeTicks({ from: 0, to: 3600, most: 5 })).toEqual([0, 900, 1800, 2700, 3600]);
    expect(timeTicks({ from: 0, to: 6 * 3600, most: 8 })).toEqual([
      0, 3600, 7200, 10_800, 14_400, 18_000, 21_600,
    ]);
  });
  it('goes on in decimal steps beyond the longest clock step', () => {
    expect(timeTicks({ from: 0, to: 10 * 86_400, most: 5 }).length).toBeLessThanOrEqual(5);
  });
});

describe('logTimeTicks', () => {
  it('returns tenths of a second up to hours', () => {
    expect(logTimeTicks({ from: 0.1, to: 36_000 })).toEqual([0.1, 1, 10, 60, 600, 3600, 36_000]);
  });
});

describe('roundUp', () => {
  it('returns the next round value', () => {
    expect([1, 1.01, 14.2, 33.9, 47, 98, 0.13].map(roundUp)).toEqual([1, 1.5, 15, 40, 50, 100, 0.15]);
  });
});
