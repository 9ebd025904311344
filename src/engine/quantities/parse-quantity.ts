import { findUnit } from './find-unit.ts';
import { normaliseText } from './normalise-text.ts';
import { parseDuration } from './parse-duration.ts';
import { notReady, type ParsedQuantity } from './parsed-quantity.ts';
import { scanNumber } from './scan-number.ts';
import type { Dimension } from './units.ts';

/** Long enough for any figure with its unit, short enough that no text is costly to read. */
const longestText = 60;
const largestValue = 1e12;

/** Quantities whose sign means something: cold, a fall in temperature, capacitive reactive power, lag and lead. */
const signed: ReadonlySet<Dimension> = new Set([
  'temperature',
  'temperature-rise',
  'reactive-power',
  'angle',
]);

/** One number and the whole rest as its unit; durations that are not as simple go to their own reader. */
function parseSingle(text: string, dimension: Dimension): ParsedQuantity {
  const number = scanNumber(text, 0);
  if (number.kind === 'no-number') return notReady('no-number', text);
  if (number.kind === 'separator-ambiguous') return notReady('separator-ambiguous', text);
  const rest = text.slice(number.end).trim().replace(/\.$/, '');
  const finding = findUnit(rest, dimension);
  if (finding.kind !== 'found') {
    const startsAnother = /(?:^|[^\p{L}^])\d/u.test(rest);
    if (finding.kind === 'other-quantity' && rest !== '') return notReady('unit-of-other-quantity', rest);
    if (dimension === 'time' && /\d/.test(rest)) return parseDuration(text);
    if (rest === '') return notReady('unit-missing', text);
    return startsAnother ? notReady('several-numbers', text) : notReady('unit-unknown', rest);
  }
  const { symbol, tens, scale } = finding.unit;
  const value = Number(`${number.mantissa}e${number.exponent + tens}`) * scale;
  // A figure too small to be told from nought would otherwise be marked as if nought had been written.
  if (value === 0 && /[1-9]/.test(number.mantissa)) return notReady('out-of-range', text);
  return { kind: 'ok', value, unit: symbol, significantDigits: number.significantDigits };
}

/**
 * Reads what a learner typed as a quantity of a given dimension. Tolerant in writing (decimal comma or point, grouped thousands, any
 * dash for minus, case of the unit where it cannot mislead, a leading "≈", "~" or "="), strict in meaning: a unit is needed
 * wherever the dimension has one, and W, VA and var never stand for one another.
 *
 * A single point is always the decimal mark ("1.200 A" is 1.2 A), so a page should show how it read the text. "1,200 A" is
 * refused as ambiguous; "0,125 A" is not. Capital M is never read as milli. As time, "m" is the minute and "2:10" is minutes and seconds.
 *
 * @param text       what was typed; any string
 * @param dimension  what is asked
 * @returns the value in the dimension's base unit (always finite, within ±10¹²), or a reason
 * @throws nothing
 * Valid for: every dimension of the table; negative values only for temperature, temperature rise, reactive power and angle.
 * Source:   none (the project's own reading rules)
 * Example:  parseQuantity('8 kVA', 'apparent-power').value → 8000
 */
export function parseQuantity(text: string, dimension: Dimension): ParsedQuantity {
  if (text.length > longestText) return notReady('too-long', text.slice(0, longestText));
  const clean = normaliseText(text);
  if (clean === '') return notReady('empty', '');
  const opening = /^[~= ]*(?:([+-]) *)?/.exec(clean);
  const body = clean.slice(opening?.[0].length ?? 0);
  const isNegative = opening?.[1] === '-';
  const read = parseSingle(body, dimension);
  if (read.kind === 'not-ready') return read.found === body ? notReady(read.reason, clean) : read;
  if (isNegative && read.value !== 0 && !signed.has(dimension)) return notReady('out-of-range', clean);
  if (!(read.value <= largestValue)) return notReady('out-of-range', clean);
  return isNegative && read.value !== 0 ? { ...read, value: -read.value } : read;
}
