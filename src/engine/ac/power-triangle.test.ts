import { describe, expect, it } from 'vitest';
import { powerTriangle } from './power-triangle.ts';

/** 3-4-5 triangle in every pair of givens. */
const lagging = {
  realPowerW: 3,
  reactivePowerVar: 4,
  apparentPowerVa: 5,
  powerFactor: 0.6,
  direction: 'lagging',
};

describe('powerTriangle', () => {
  const pairs = [
    { realPowerW: 3, reactivePowerVar: 4 },
    { realPowerW: 3, apparentPowerVa: 5 },
    { realPowerW: 3, powerFactor: 0.6 },
    { reactivePowerVar: 4, apparentPowerVa: 5 },
    { reactivePowerVar: 4, powerFactor: 0.6 },
    { apparentPowerVa: 5, powerFactor: 0.6 },
  ];
  for (const pair of pairs) {
    it(`completes the 3-4-5 triangle from ${Object.keys(pair).join(' and ')}`, () => {
      const found = powerTriangle(pair);
      expect(found.realPowerW).toBeCloseTo(3, 12);
      expect(found.reactivePowerVar).toBeCloseTo(4, 12);
      expect(found.apparentPowerVa).toBeCloseTo(5, 12);
      expect(found.powerFactor).toBeCloseTo(0.6, 12);
      expect(found.direction).toBe('lagging');
    });
  }

  it('takes a leading current as negative reactive power', () => {
    expect(powerTriangle({ apparentPowerVa: 5, realPowerW: 3, direction: 'leading' })).toEqual({
      ...lagging,
      reactivePowerVar: -4,
      direction: 'leading',
    });
    expect(powerTriangle({ realPowerW: 3, reactivePowerVar: -4 }).direction).toBe('leading');
  });

  it('calls a current without reactive power in phase, whatever direction was said', () => {
    const found = powerTriangle({ realPowerW: 3, powerFactor: 1, direction: 'leading' });
    expect(found).toEqual({
      realPowerW: 3,
      reactivePowerVar: 0,
      apparentPowerVa: 3,
      powerFactor: 1,
      direction: 'in-phase',
    });
    expect(Object.is(found.reactivePowerVar, 0)).toBe(true);
  });

  it('accepts nought power and a power factor of nought', () => {
    expect(powerTriangle({ realPowerW: 0, reactivePowerVar: 0 }).powerFactor).toBe(1);
    expect(powerTriangle({ apparentPowerVa: 5, powerFactor: 0 })).toMatchObject({
      realPowerW: 0,
      reactivePowerVar: 5,
    });
    expect(powerTriangle({ reactivePowerVar: 5, powerFactor: 0 })).toMatchObject({
      realPowerW: 0,
      apparentPowerVa: 5,
    });
  });

  it('rejects givens that fit no triangle', () => {
    const bad = [
      {},
      { realPowerW: 3 },
      { realPowerW: 3, reactivePowerVar: 4, apparentPowerVa: 5 },
      { realPowerW: -3, reactivePowerVar: 4 },
      { realPowerW: 5.01, apparentPowerVa: 5 },
      { reactivePowerVar: -5.01, apparentPowerVa: 5 },
      { apparentPowerVa: -1, powerFactor: 1 },
      { realPowerW: 3, powerFactor: 1.01 },
      { realPowerW: 3, powerFactor: 0 },
      { reactivePowerVar: 4, powerFactor: 1 },
      { reactivePowerVar: 0, powerFactor: 0.5 },
      { realPowerW: Number.NaN, powerFactor: 1 },
    ];
    for (const given of bad) expect(() => powerTriangle(given), JSON.stringify(given)).toThrow(RangeError);
    expect(() => powerTriangle({ realPowerW: 3, reactivePowerVar: 4, direction: 'leading' })).toThrow(
      /direction/,
    );
  });
});
