import { formatFixed, roundSignificant, type SignificantDigits, trimZeros } from './format-number.ts';

/** One number with its unit, so that a page can mark the two up differently. */
export type QuantityPart = { number: string; unit: string };

/** Seconds to which a duration of a minute or more is rounded: whole minutes from an hour on, whole seconds below, finer if asked. */
function resolutionS(timeS: number, digits: number): number {
  if (timeS >= 3600) return digits <= 4 ? 60 : 10 ** -Math.max(0, digits - 5);
  return 10 ** -Math.max(0, digits - 4);
}

/**
 * Splits a time of a minute or more into hours, minutes and seconds; parts that are nought are left out.
 *
 * @param timeS   time [s], finite; from 60 s up in absolute value after rounding
 * @param digits  significant digits, 1–15: up to four give whole minutes from an hour on and whole seconds below it, each
 *                further one a finer step; 'as-is' keeps six digits and leaves nothing out
 * @returns one to three parts, the largest first; a negative time carries its sign on the first
 * @throws nothing
 * Valid for: any finite time; hours are not gathered into days.
 * Source:   none (the project's own writing rules)
 * Example:  formatDuration(12000, 3).length → 2
 */
export function formatDuration(timeS: number, digits: SignificantDigits): QuantityPart[] {
  const size = Math.abs(timeS);
  let total: number;
  if (digits === 'as-is') total = roundSignificant(size, 6);
  else {
    const step = resolutionS(size, digits);
    total = Math.round(size / step) * step;
  }
  const hours = Math.floor(total / 3600);
  const minutes = Math.floor((total - hours * 3600) / 60);
  const seconds = total - hours * 3600 - minutes * 60;
  const decimals = digits === 'as-is' ? 6 : Math.max(0, digits - (total >= 3600 ? 5 : 4));
  const sign = timeS < 0 ? -1 : 1;
  const parts: QuantityPart[] = [];
  const add = (value: number, unit: string, places: number) => {
    const number = formatFixed(value * (parts.length === 0 ? sign : 1), places);
    if (/[1-9]/.test(number)) parts.push({ number: trimZeros(number), unit });
  };
  add(hours, 'h', 0);
  add(minutes, 'min', 0);
  add(seconds, 's', decimals);
  return parts;
}
