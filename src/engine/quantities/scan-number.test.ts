import { describe, expect, it } from 'vitest';
import { scanNumber } from './scan-number.ts';

describe('scanNumber', () => {
  it('reports digits, decimals and where it stopped', () => {
    expect(scanNumber('x 12.50 A', 2)).toEqual({
      kind: 'number',
      mantissa: '12.50',
      exponent: 0,
      decimals: 2,
      significantDigits: 4,
      end: 7,
    });
  });

  it('counts significant digits without leading zeros and gives nought one', () => {
    expect(scanNumber('0.00340', 0)).toMatchObject({ significantDigits: 3 });
    expect(scanNumber('0.00', 0)).toMatchObject({ significantDigits: 1 });
  });

  it('takes a comma for decimal unless three digits follow one to three', () => {
    expect(scanNumber('1,20', 0)).toMatchObject({ mantissa: '1.20' });
    expect(scanNumber('1,200', 0)).toEqual({ kind: 'separator-ambiguous' });
    expect(scanNumber('999,200', 0)).toEqual({ kind: 'separator-ambiguous' });
    expect(scanNumber('1,2000', 0)).toMatchObject({ mantissa: '1.2000' });
    expect(scanNumber('1000,200', 0)).toMatchObject({ mantissa: '1000.200' });
  });

  it('joins a space only before exactly three digits', () => {
    expect(scanNumber('12 345 678', 0)).toMatchObject({ mantissa: '12345678' });
    expect(scanNumber('12 3456', 0)).toMatchObject({ mantissa: '12', end: 2 });
    expect(scanNumber('1234 567', 0)).toMatchObject({ mantissa: '1234', end: 4 });
  });

  it('reads exponents and leaves other letters alone', () => {
    expect(scanNumber('5e-3', 0)).toMatchObject({ exponent: -3, end: 4 });
    expect(scanNumber('5 × 10^4 A', 0)).toMatchObject({ exponent: 4, end: 8 });
    expect(scanNumber('5e', 0)).toMatchObject({ exponent: 0, end: 1 });
    expect(scanNumber('5x10 A', 0)).toMatchObject({ exponent: 0, end: 1 });
  });

  it('finds no number where none begins', () => {
    for (const text of ['', 'A', '.', ',', '.A', '-5'])
      expect(scanNumber(text, 0)).toEqual({ kind: 'no-number' });
  });
});
