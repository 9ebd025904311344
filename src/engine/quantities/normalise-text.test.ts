import { describe, expect, it } from 'vitest';
import { normaliseText } from './normalise-text.ts';

describe('normaliseText', () => {
  it('joins every kind of dash, space and apostrophe', () => {
    for (const dash of ['\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212', '\uff0d'])
      expect(normaliseText(`${dash}5`)).toBe('-5');
    for (const space of ['\u00a0', '\u2007', '\u2009', '\u202f', '\u3000'])
      expect(normaliseText(`1${space}2`)).toBe('1 2');
    for (const mark of ['\u2019', '\u2018', '\u02bc']) expect(normaliseText(`1${mark}2`)).toBe("1'2");
  });

  it('keeps a superscript exponent apart from the digits before it', () => {
    expect(normaliseText('1.2×10³')).toBe('1.2×10^3');
    expect(normaliseText('1.2×10⁻¹²')).toBe('1.2×10^-12');
  });

  it('drops marks that cannot be seen and leaves plain text as it is', () => {
    expect(normaliseText('\ufeff5\u200b A\u200e')).toBe('5 A');
    expect(normaliseText('  34.8 A\t')).toBe('34.8 A');
  });
});
