/** A number read from the front of a text, still as decimal digits so that a power of ten can be joined without rounding. */
export type ScannedNumber = {
  kind: 'number';
  /** Digits with at most one ".", no sign. */
  mantissa: string;
  exponent: number;
  /** Digits after the decimal separator. */
  decimals: number;
  significantDigits: number;
  /** Index just behind the number. */
  end: number;
};

export type NumberScan = ScannedNumber | { kind: 'no-number' } | { kind: 'separator-ambiguous' };

const isDigit = (code: number) => code >= 48 && code <= 57;

function digitsEnd(text: string, from: number): number {
  let at = from;
  while (isDigit(text.charCodeAt(at))) at += 1;
  return at;
}

/** How far a mantissa reaches: digits joined by points, commas, apostrophes, or by single spaces before exactly three digits. */
function mantissaEnd(text: string, start: number): number {
  let at = digitsEnd(text, start);
  let groupStart = start;
  for (;;) {
    const mark = text[at];
    const groupEnd = digitsEnd(text, at + 1);
    const size = groupEnd - at - 1;
    if (mark === ' ') {
      const leading = at - groupStart;
      if (size !== 3 || leading < 1 || leading > 3 || (text[groupStart] === '0' && groupStart === start))
        return at;
    } else if (mark === '.' || mark === ',') {
      if (size === 0) return at > start && text[at + 1] !== ',' && text[at + 1] !== '.' ? at + 1 : at;
    } else if (mark !== "'" || size === 0) return at;
    groupStart = at + 1;
    at = groupEnd;
  }
}

/** Decides which marks group thousands and which one is the decimal mark; null when that cannot be told. */
function readMantissa(raw: string): { mantissa: string; decimals: number } | null {
  if (!/\D/.test(raw)) return { mantissa: raw, decimals: 0 };
  const points = raw.split('.').length - 1;
  const commas = raw.split(',').length - 1;
  const hasOtherGrouping = /[ ']/.test(raw);
  let decimalMark = '';
  if (points > 0 && commas > 0) decimalMark = raw.lastIndexOf('.') > raw.lastIndexOf(',') ? '.' : ',';
  else if (points === 1) decimalMark = '.';
  else if (commas === 1) {
    if (!hasOtherGrouping && /^[1-9]\d{0,2},\d{3}$/.test(raw)) return null;
    decimalMark = ',';
  }
  const cut = decimalMark === '' ? raw.length : raw.lastIndexOf(decimalMark);
  const whole = raw.slice(0, cut);
  const fraction = raw.slice(cut + 1);
  const isGrouped = /[., ']/.test(whole);
  // One kind of grouping mark throughout, groups of three, and no zero in front of a grouped number.
  if (isGrouped && !/^[1-9]\d{0,2}([., '])\d{3}(?:\1\d{3})*$/.test(whole)) return null;
  if (/\D/.test(fraction)) return null;
  const digits = isGrouped ? whole.replace(/\D/g, '') : whole;
  return { mantissa: `${digits || '0'}${fraction ? `.${fraction}` : ''}`, decimals: fraction.length };
}

/** Reads "e3", "×10^3", "x 10^-3" or "·10^3" at a position. */
function readExponent(text: string, at: number): { exponent: number; end: number } {
  const mark = text[at];
  if (mark === undefined || !/[eE×x*· ]/.test(mark)) return { exponent: 0, end: at };
  const match = /^(?:[eE]| ?[×x*·] ?10\^)([+-]?\d{1,9})(?!\d)/.exec(text.slice(at));
  return match ? { exponent: Number(match[1]), end: at + match[0].length } : { exponent: 0, end: at };
}

/**
 * Reads one unsigned number at a position of a normalised text. A single point is always the decimal mark. A single comma is the decimal
 * mark too, except before exactly three digits with one to three digits in front ("1,200"): that may be either, and is
 * reported as ambiguous. Both marks together, or one mark several times, settle the matter ("1.200,5", "1.200.000").
 *
 * @param text   normalised text
 * @param start  index to begin at, ≥ 0
 * @returns the number as digits and exponent, or why there is none
 * @throws nothing
 * Valid for: any string; the work grows linearly with its length.
 * Source:   iso-80000-1, 7.3.1 (groups of three by a small space, from memory)
 * Example:  scanNumber('1.200,5 W', 0).mantissa → '1200.5'
 */
export function scanNumber(text: string, start: number): NumberScan {
  const first = text.charCodeAt(start);
  const opensWithMark = (text[start] === '.' || text[start] === ',') && isDigit(text.charCodeAt(start + 1));
  if (!isDigit(first) && !opensWithMark) return { kind: 'no-number' };
  const end = mantissaEnd(text, start);
  const read = readMantissa(text.slice(start, end));
  if (!read) return { kind: 'separator-ambiguous' };
  const tail = readExponent(text, end);
  const significant = read.mantissa.replace('.', '').replace(/^0+/, '');
  return {
    kind: 'number',
    mantissa: read.mantissa,
    exponent: tail.exponent,
    decimals: read.decimals,
    significantDigits: Math.max(1, significant.length),
    end: tail.end,
  };
}
