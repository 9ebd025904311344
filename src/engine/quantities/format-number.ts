/** Narrow no-break space: between groups of digits, and between a number and its unit. */
export const narrowSpace = '\u202f';
const minusSign = '\u2212';

/** How many digits to show: a count, or 'as-is' for given data (up to six digits, no trailing zeros). */
export type SignificantDigits = number | 'as-is';

function grouped(digits: string): string {
  // Four digits read well unbroken; from five on, groups of three.
  return digits.length < 5 ? digits : digits.replace(/\B(?=(?:\d{3})+$)/g, narrowSpace);
}

/**
 * Writes a fixed-point number for people: decimal point, true minus sign, groups of three from 10 000.
 *
 * @param value     number to write, finite
 * @param decimals  digits behind the point, 0–100
 * @returns text without unit; a value that rounds to nought has no sign
 * @throws   {RangeError} value not finite
 * Valid for: |value| < 10²¹
 * Source:   iso-80000-1, 7.3 (printing of numbers, from memory)
 * Example:  formatFixed(7.25, 1) → '7.3'
 */
export function formatFixed(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`value: expected a finite number, found ${value}`);
  const [whole = '', fraction] = Math.abs(value).toFixed(decimals).split('.');
  const text = fraction === undefined ? grouped(whole) : `${grouped(whole)}.${fraction}`;
  return value < 0 && /[1-9]/.test(text) ? minusSign + text : text;
}

/**
 * Rounds to a number of significant digits.
 *
 * @param value   any finite number
 * @param digits  significant digits, 1–15
 * @returns the nearest number with that many digits
 * @throws   {RangeError} digits outside 1–100
 * Valid for: every finite number.
 * Source:   none (rounding)
 * Example:  roundSignificant(1177.2, 2) → 1200
 */
export function roundSignificant(value: number, digits: number): number {
  return Number(value.toPrecision(digits));
}

/**
 * Writes a number with a given count of significant digits; outside 10⁻⁶…10¹⁵ as a power of ten ("1.20×10⁻⁹").
 *
 * @param value   number to write, finite
 * @param digits  significant digits, 1–15, or 'as-is'
 * @returns text without unit
 * @throws   {RangeError} value not finite, or digits outside the limits
 * Valid for: every finite number.
 * Source:   none (the project's own writing rules)
 * Example:  formatSignificant(34.77, 3) → '34.8'
 */
export function formatSignificant(value: number, digits: SignificantDigits): string {
  if (!Number.isFinite(value)) throw new RangeError(`value: expected a finite number, found ${value}`);
  if (digits !== 'as-is' && !(Number.isInteger(digits) && digits >= 1 && digits <= 15)) {
    throw new RangeError(`digits: expected a whole number from 1 to 15 or 'as-is', found ${digits}`);
  }
  if (value === 0) return '0';
  const count = digits === 'as-is' ? 6 : digits;
  const [mantissa = '', power = ''] = Math.abs(value)
    .toExponential(count - 1)
    .split('e');
  const exponent = Number(power);
  if (exponent < -6 || exponent >= 15) {
    const shown = digits === 'as-is' ? String(Number(mantissa)) : mantissa;
    const raised = Array.from(String(exponent), (mark) =>
      mark === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(mark)],
    ).join('');
    return `${value < 0 ? minusSign : ''}${shown}×10${raised}`;
  }
  const rounded = roundSignificant(value, count);
  const text = formatFixed(rounded, Math.max(0, count - 1 - exponent));
  return digits === 'as-is' ? trimZeros(text) : text;
}

/**
 * Drops zeros behind the last digit of a fraction, and the point if nothing follows it.
 *
 * @param text  a number as written by this folder, without unit
 * @returns the same number, shorter
 * @throws nothing
 * Valid for: fixed-point texts; a text without a point is returned as it is.
 * Source:   none (the project's own writing rules)
 * Example:  trimZeros('8.00') → '8'
 */
export function trimZeros(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}
