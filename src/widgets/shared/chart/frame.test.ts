import { describe, expect, it } from 'vitest';
import { clamp, frameOf, linearScale, logScale } from './frame.ts';
import { linePath } from './line-path.ts';

describe('linearScale and logScale', () => {
  it('returns the ends at the ends, also when the axis runs down', () => {
    const down = linearScale({ from: 0, to: 10, start: 300, end: 20 });
    expect([down(0), down(5), down(10)]).toEqual([300, 160, 20]);
    const decades = logScale({ from: 0.1, to: 1000, start: 0, end: 400 });
    expect(decades(0.1)).toBeCloseTo(0, 9);
    expect(decades(10)).toBeCloseTo(200, 9);
    expect(decades(1000)).toBeCloseTo(400, 9);
  });
});

describe('frameOf', () => {
  it('returns the edges inside the room left free', () => {
    expect(frameOf({ width: 640, height: 320 }, { left: 50, right: 10, top: 20, bottom: 30 })).toEqual({
      left: 50,
      right: 630,
      top: 20,
      bottom: 290,
    });
  });
});

describe('clamp', () => {
  it('keeps a value inside and moves one outside to the bound', () => {
    expect([clamp(5, 0, 10), clamp(-1, 0, 10), clamp(11, 0, 10)]).toEqual([5, 0, 10]);
  });
});

describe('linePath', () => {
  it('returns one command for each point, in tenths of a pixel', () => {
    expect(
      linePath([
        { x: 0, y: 1.04 },
        { x: 2.26, y: 3 },
      ]),
    ).toBe('M0 1L2.3 3');
  });
  it('returns nothing for a single point', () => {
    expect(linePath([{ x: 0, y: 1 }])).toBe('');
  });
});
