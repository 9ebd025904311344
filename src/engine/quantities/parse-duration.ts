import { findUnit } from './find-unit.ts';
import { notReady, type ParsedQuantity } from './parsed-quantity.ts';
import { scanNumber } from './scan-number.ts';

type Part = { value: number; unit: string; secondsPerUnit: number; decimals: number };

function clock(text: string): ParsedQuantity {
  const match = /^(\d+):(\d{2})(?::(\d{2}))?([.,]\d+)? ?(min|h)?\.?$/i.exec(text);
  if (!match) return notReady('several-numbers', text);
  const [, first = '', second = '', third, fraction = '', unit = ''] = match;
  const isHours = third !== undefined || unit.toLowerCase() === 'h';
  // "2:10 h" is hours and minutes, "2:10" and "2:10 min" are minutes and seconds, "1:05:00" needs no unit.
  if (third !== undefined && unit.toLowerCase() === 'min') return notReady('several-numbers', text);
  if (Number(second) > 59 || Number(third ?? 0) > 59) return notReady('out-of-range', text);
  const decimals = fraction.replace(',', '.');
  const lastStep = isHours && third === undefined ? 60 : 1;
  const whole = isHours
    ? Number(first) * 3600 + Number(second) * 60 + Number(third ?? 0)
    : Number(first) * 60 + Number(second);
  const value = whole + Number(`0${decimals}`) * lastStep;
  const digits = String(whole / lastStep).length + Math.max(0, decimals.length - 1);
  return { kind: 'ok', value, unit: isHours ? 'h' : 'min', significantDigits: digits };
}

/**
 * Reads a duration of several parts ("2 min 10 s", "1 h 5 min", "2m10s") or on a clock ("2:10" minutes and seconds, "1:05:00"
 * hours, minutes and seconds). Parts must go from larger to smaller, and only the last may carry decimals.
 *
 * @param text  normalised text without sign; at most the parser's length limit
 * @returns the time in seconds [s], or the reason why it is not one; a single part ("45 s") is read as well
 * @throws nothing
 * Valid for: any string.
 * Source:   iso-80000-3 (minute, hour, day, from memory)
 * Example:  parseDuration('2 min 10 s').value → 130
 */
export function parseDuration(text: string): ParsedQuantity {
  if (text.includes(':')) return clock(text);
  const parts: Part[] = [];
  let at = 0;
  while (at < text.length) {
    const number = scanNumber(text, at);
    if (number.kind === 'no-number')
      return notReady(parts.length > 0 ? 'unit-unknown' : 'no-number', text.slice(at));
    if (number.kind !== 'number') return notReady(number.kind, text);
    const spelling = /^ *([^\d\s.,;+-]*)\.?/.exec(text.slice(number.end));
    const typed = spelling?.[1] ?? '';
    if (typed === '')
      return notReady(/\d/.test(text.slice(number.end)) ? 'several-numbers' : 'unit-missing', text);
    const finding = findUnit(typed, 'time');
    if (finding.kind === 'other-quantity') return notReady('unit-of-other-quantity', typed);
    if (finding.kind === 'unknown') return notReady('unit-unknown', typed);
    const previous = parts.at(-1);
    const secondsPerUnit = Number(`${finding.unit.scale}e${finding.unit.tens}`);
    if (previous && (secondsPerUnit >= previous.secondsPerUnit || previous.decimals > 0))
      return notReady('several-numbers', text);
    const figure = Number(`${number.mantissa}e${number.exponent + finding.unit.tens}`) * finding.unit.scale;
    parts.push({ value: figure, unit: finding.unit.symbol, secondsPerUnit, decimals: number.decimals });
    at = number.end + (spelling?.[0].length ?? 0);
    while (text[at] === ' ') at += 1;
  }
  const last = parts.at(-1);
  if (!last || !parts[0]) return notReady('empty', text);
  const value = parts.reduce((sum, part) => sum + part.value, 0);
  const inLastUnit = Math.round(value / last.secondsPerUnit);
  const significantDigits = (inLastUnit === 0 ? 0 : String(inLastUnit).length) + last.decimals;
  return { kind: 'ok', value, unit: parts[0].unit, significantDigits: Math.max(1, significantDigits) };
}
