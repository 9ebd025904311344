import { describe, expect, it } from 'vitest';
import { parallelImpedance } from './parallel-impedance.ts';
import { seriesImpedance } from './series-impedance.ts';

describe('seriesImpedance', () => {
  it('sets inductive above and capacitive below the axis', () => {
    const frequencyHz = 1 / (2 * Math.PI);
    expect(seriesImpedance({ resistanceOhm: 2, inductanceH: 3, frequencyHz })).toEqual({ re: 2, im: 3 });
    expect(seriesImpedance({ capacitanceF: 0.25, frequencyHz })).toEqual({ re: 0, im: -4 });
    expect(seriesImpedance({ inductanceH: 4, capacitanceF: 0.25, frequencyHz }).im).toBe(0);
  });

  it('rejects values outside their limits', () => {
    expect(() => seriesImpedance({ frequencyHz: 0 })).toThrow(/frequencyHz/);
    expect(() => seriesImpedance({ capacitanceF: 0, frequencyHz: 50 })).toThrow(/capacitanceF/);
    expect(() => seriesImpedance({ resistanceOhm: -1, frequencyHz: 50 })).toThrow(/resistanceOhm/);
    expect(() => seriesImpedance({ inductanceH: -1, frequencyHz: 50 })).toThrow(/inductanceH/);
  });
});

describe('parallelImpedance', () => {
  it('adds admittances', () => {
    // 1/6 + 1/3 = 1/2; j1 beside 1: j/(1 + j) = 0.5 + j0.5
    expect(
      parallelImpedance([
        { re: 6, im: 0 },
        { re: 3, im: 0 },
      ]).re,
    ).toBeCloseTo(2, 12);
    const mixed = parallelImpedance([
      { re: 1, im: 0 },
      { re: 0, im: 1 },
    ]);
    expect(mixed.re).toBeCloseTo(0.5, 12);
    expect(mixed.im).toBeCloseTo(0.5, 12);
  });

  it('gives nought for a short circuit and rejects lossless resonance and no branch', () => {
    expect(
      parallelImpedance([
        { re: 6, im: 0 },
        { re: 0, im: 0 },
      ]),
    ).toEqual({ re: 0, im: 0 });
    expect(() =>
      parallelImpedance([
        { re: 0, im: 2 },
        { re: 0, im: -2 },
      ]),
    ).toThrow(RangeError);
    expect(() => parallelImpedance([])).toThrow(/branches/);
  });
});
