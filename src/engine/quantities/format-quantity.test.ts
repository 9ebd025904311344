import { describe, expect, it } from 'vitest';
import { type FormatOptions, formatParts, formatQuantity } from './format-quantity.ts';
import type { Dimension } from './units.ts';

/** Shows narrow spaces as "_" so that a test reads at a glance. */
const shown = (value: number, dimension: Dimension, options?: FormatOptions) =>
  formatQuantity(value, dimension, options).replace(/\u202f/g, '_');

describe('formatQuantity', () => {
  it('chooses the prefix that gives 1 to 999', () => {
    expect(shown(34.77, 'current')).toBe('34.8_A');
    expect(shown(8000, 'apparent-power')).toBe('8.00_kVA');
    expect(shown(999.4, 'real-power')).toBe('999_W');
    expect(shown(999.5, 'real-power')).toBe('1.00_kW');
    expect(shown(0.0348, 'current')).toBe('34.8_mA');
    expect(shown(-5520, 'reactive-power')).toBe('−5.52_kvar');
    expect(shown(0.000305, 'capacitance')).toBe('305_µF');
    expect(shown(0.0011772, 'capacitance')).toBe('1180_µF');
    expect(shown(0, 'current')).toBe('0_A');
  });

  it('shows given data without noise', () => {
    const given = { significantDigits: 'as-is' } as const;
    expect(shown(230, 'voltage', given)).toBe('230_V');
    expect(shown(8000, 'apparent-power', given)).toBe('8_kVA');
    expect(shown(0.1 + 0.2, 'ratio', given)).toBe('0.3');
    expect(shown(123_456.7, 'real-power', { ...given, unit: 'W' })).toBe('123_457_W');
    expect(shown(90.5, 'time', given)).toBe('1_min_30.5_s');
    expect(shown(12_345, 'time', given)).toBe('3_h_25_min_45_s');
  });

  it('groups thousands from 10 000 only', () => {
    expect(shown(9990, 'real-power', { unit: 'W' })).toBe('9990_W');
    expect(shown(10_000, 'real-power', { unit: 'W' })).toBe('10_000_W');
    expect(shown(1_234_567, 'count')).toBe('1_234_567');
  });

  it('splits time from a minute on, after rounding', () => {
    expect(shown(45, 'time')).toBe('45.0_s');
    expect(shown(59.94, 'time')).toBe('59.9_s');
    expect(shown(59.97, 'time')).toBe('1_min');
    expect(shown(130, 'time')).toBe('2_min_10_s');
    expect(shown(3599.4, 'time')).toBe('59_min_59_s');
    expect(shown(3599.6, 'time')).toBe('1_h');
    expect(shown(12_000, 'time')).toBe('3_h_20_min');
    expect(shown(12_345, 'time')).toBe('3_h_26_min');
    expect(shown(12_345, 'time', { significantDigits: 4 })).toBe('3_h_26_min');
    expect(shown(12_345, 'time', { significantDigits: 5 })).toBe('3_h_25_min_45_s');
    expect(shown(130, 'time', { unit: 's' })).toBe('130_s');
    expect(shown(0.35, 'time')).toBe('350_ms');
  });

  it('writes temperatures to tenths, ratios and counts without trailing zeros', () => {
    expect(shown(-5, 'temperature')).toBe('−5_°C');
    expect(shown(82.36, 'temperature')).toBe('82.4_°C');
    expect(shown(-0.04, 'temperature')).toBe('0_°C');
    expect(shown(0.87, 'ratio')).toBe('0.87');
    expect(shown(0.87, 'ratio', { unit: '%' })).toBe('87_%');
    expect(shown(1234, 'count')).toBe('1234');
    expect(shown(25, 'cycles')).toBe('25_cycles');
  });

  it('sets the degree sign of an angle at once behind the number', () => {
    expect(shown(-36.87, 'angle')).toBe('−36.9°');
  });

  it('falls back to powers of ten for figures no prefix can hold', () => {
    expect(shown(1.2e-15, 'current')).toBe('1.20×10⁻⁹_µA');
  });

  it('rejects what is not finite, a unit of another quantity, and odd digits', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) {
      for (const dimension of ['current', 'time', 'temperature', 'count'] as const) {
        expect(() => formatQuantity(value, dimension)).toThrow(RangeError);
      }
    }
    expect(() => formatQuantity(1, 'current', { unit: 'W' })).toThrow(RangeError);
    for (const significantDigits of [0, 16, 2.5]) {
      for (const dimension of ['current', 'time', 'temperature'] as const) {
        expect(() => formatQuantity(1, dimension, { significantDigits })).toThrow(RangeError);
      }
    }
  });
});

describe('formatParts', () => {
  it('gives number and unit apart', () => {
    expect(formatParts(130, 'time')).toEqual([
      { number: '2', unit: 'min' },
      { number: '10', unit: 's' },
    ]);
    expect(formatParts(0.87, 'ratio')).toEqual([{ number: '0.87', unit: '' }]);
  });
});
