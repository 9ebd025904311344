import { describe, expect, it } from 'vitest';
import {
  complexAngleDeg,
  complexConjugate,
  complexMagnitude,
  complexProduct,
  complexQuotient,
  complexSum,
  phasor,
} from './complex.ts';

describe('complex numbers', () => {
  it('go from polar to rectangular form and back', () => {
    const value = phasor(5, -120);
    expect(value.re).toBeCloseTo(-2.5, 12);
    expect(value.im).toBeCloseTo(-4.330127, 6);
    expect(complexMagnitude(value)).toBeCloseTo(5, 12);
    expect(complexAngleDeg(value)).toBeCloseTo(-120, 12);
  });

  it('multiply and divide as hand-worked', () => {
    // (1 + j2)(3 + j4) = 3 − 8 + j(4 + 6)
    expect(complexProduct({ re: 1, im: 2 }, { re: 3, im: 4 })).toEqual({ re: -5, im: 10 });
    expect(complexQuotient({ re: -5, im: 10 }, { re: 3, im: 4 })).toEqual({ re: 1, im: 2 });
    expect(() => complexQuotient({ re: 1, im: 0 }, { re: 0, im: 0 })).toThrow(/divisor/);
  });

  it('add up, an empty list to nought', () => {
    expect(
      complexSum([
        { re: 1, im: 2 },
        { re: 3, im: -5 },
      ]),
    ).toEqual({ re: 4, im: -3 });
    expect(complexSum([])).toEqual({ re: 0, im: 0 });
    expect(complexConjugate({ re: 1, im: 2 })).toEqual({ re: 1, im: -2 });
  });
});
