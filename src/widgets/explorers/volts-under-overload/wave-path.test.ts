import { describe, expect, it } from 'vitest';
import { wavePath } from './wave-path.ts';

const box = { left: 0, right: 100, middle: 50, amplitude: 40 };
const heights = (path: string) => [...path.matchAll(/ ([\d.]+)/g)].map((match) => Number(match[1]));

describe('wavePath', () => {
  it('reaches the full height before the load, the lower one under it, and nothing after the stop', () => {
    const path = wavePath({ cyclesBefore: 2, cyclesAfter: 8, voltageRatio: 0.5, stopAfterCycles: 5 }, box);
    const ys = heights(path);
    expect(Math.min(...ys.slice(0, 24))).toBe(10);
    expect(Math.min(...ys.slice(25, 84))).toBe(30);
    expect(new Set(ys.slice(85))).toEqual(new Set([50]));
  });
  it('goes on to the end when nothing stops it', () => {
    const ys = heights(
      wavePath({ cyclesBefore: 1, cyclesAfter: 3, voltageRatio: 1, stopAfterCycles: null }, box),
    );
    expect(Math.max(...ys.slice(-12))).toBe(90);
  });
});
