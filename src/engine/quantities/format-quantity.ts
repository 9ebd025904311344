import { formatDuration, type QuantityPart } from './format-duration.ts';
import {
  formatFixed,
  formatSignificant,
  narrowSpace,
  roundSignificant,
  type SignificantDigits,
  trimZeros,
} from './format-number.ts';
import { type Dimension, type Unit, units } from './units.ts';

/** How a quantity is written. */
export type FormatOptions = {
  /** Significant digits, 1–15, or 'as-is' for given data (up to six digits, no trailing zeros). Default 3. */
  significantDigits?: SignificantDigits;
  /** Symbol of the unit to use instead of the customary one. */
  unit?: string;
};

/**
 * Units among which the customary one is chosen, smallest first; a dimension not listed keeps its base unit.
 * Capacitance jumps from µF to F because the trade writes 1200 µF, not 1.2 mF.
 */
const customary: Partial<Record<Dimension, readonly string[]>> = {
  current: ['µA', 'mA', 'A', 'kA'],
  voltage: ['mV', 'V', 'kV'],
  'apparent-power': ['VA', 'kVA', 'MVA'],
  'real-power': ['mW', 'W', 'kW', 'MW'],
  'reactive-power': ['var', 'kvar', 'Mvar'],
  resistance: ['µΩ', 'mΩ', 'Ω', 'kΩ', 'MΩ'],
  inductance: ['µH', 'mH', 'H'],
  capacitance: ['pF', 'nF', 'µF', 'F'],
  time: ['µs', 'ms', 's'],
  energy: ['Wh', 'kWh', 'MWh'],
  charge: ['mAh', 'Ah'],
  frequency: ['Hz', 'kHz', 'MHz'],
  length: ['mm', 'm', 'km'],
};

/** Dimensions in which trailing zeros are noise: "0.87", "3", "25 cycles". */
const trimmed: ReadonlySet<Dimension> = new Set(['ratio', 'count', 'cycles']);

function unitBySymbol(dimension: Dimension, symbol: string): Unit {
  const unit = units[dimension].find((candidate) => candidate.symbol === symbol);
  if (!unit) throw new RangeError(`unit: expected a unit of ${dimension}, found "${symbol}"`);
  return unit;
}

function inUnit(value: number, unit: Unit): number {
  // Dividing by a whole power of ten rounds once; multiplying by its inverse would round twice.
  return unit.tens < 0 ? (value * 10 ** -unit.tens) / unit.scale : value / 10 ** unit.tens / unit.scale;
}

/** The largest customary unit in which the rounded figure is at least 1, or else the smallest of them. */
function customaryUnit(value: number, dimension: Dimension, digits: SignificantDigits): Unit {
  const list = (customary[dimension] ?? []).map((symbol) => unitBySymbol(dimension, symbol));
  const base = units[dimension].find((unit) => unit.tens === 0 && unit.scale === 1);
  const first = list[0] ?? base;
  if (!first) throw new RangeError(`dimension: no unit for ${dimension}`);
  if (list.length === 0 || (value === 0 && base)) return base ?? first;
  const count = digits === 'as-is' ? 6 : digits;
  return list.findLast((unit) => Math.abs(roundSignificant(inUnit(value, unit), count)) >= 1) ?? first;
}

function numberText(value: number, dimension: Dimension, digits: SignificantDigits): string {
  if (dimension === 'temperature' || dimension === 'temperature-rise') {
    // Counting digits means nothing on a scale whose nought is arbitrary: three digits stand for tenths.
    if (digits !== 'as-is' && Math.abs(value) < 1e15)
      return trimZeros(formatFixed(value, Math.max(0, digits - 2)));
  }
  if (dimension === 'count' && Number.isSafeInteger(value)) return formatFixed(value, 0);
  const text = formatSignificant(value, digits);
  return trimmed.has(dimension) ? trimZeros(text) : text;
}

/**
 * Writes a quantity in parts, so that a page can set numbers and units apart. Time of a minute or more has several
 * parts, everything else one. The customary prefix is chosen so that the number runs from 1 to 999.
 *
 * @param value      in the base unit of the dimension, finite
 * @param dimension  what the number measures
 * @param options    digits and unit; see the type
 * @returns number texts (decimal point, U+2212 as minus, U+202F between thousands from 10 000) with unit symbols, '' for none
 * @throws   {RangeError} value not finite, digits outside 1–15, or a unit of another dimension
 * Valid for: every finite number; temperatures show digits − 2 decimals, counts that are whole are never rounded.
 * Source:   iso-80000-1, 7.3 (printing of numbers, from memory)
 * Example:  formatParts(8000, 'apparent-power')[0].number → 8.00
 */
export function formatParts(
  value: number,
  dimension: Dimension,
  options: FormatOptions = {},
): QuantityPart[] {
  if (!Number.isFinite(value)) throw new RangeError(`value: expected a finite number, found ${value}`);
  const digits = options.significantDigits ?? 3;
  // Checked for every dimension alike, also where the count is used only indirectly.
  formatSignificant(1, digits);
  if (options.unit === undefined && dimension === 'time') {
    const rounded = roundSignificant(value, digits === 'as-is' ? 6 : digits);
    if (Math.abs(rounded) >= 60) return formatDuration(Math.abs(value) < 60 ? rounded : value, digits);
  }
  const unit =
    options.unit === undefined
      ? customaryUnit(value, dimension, digits)
      : unitBySymbol(dimension, options.unit);
  return [{ number: numberText(inUnit(value, unit), dimension, digits), unit: unit.symbol }];
}

/**
 * Writes a quantity as one text: "34.8 A", "8.00 kVA", "2 min 10 s", "−5 °C", "0.87".
 *
 * @param value      in the base unit of the dimension, finite
 * @param dimension  what the number measures
 * @param options    significantDigits (default 3, or 'as-is' for given data) and unit
 * @returns text with U+202F between number and unit and between parts; a degree sign of an angle follows at once
 * @throws   {RangeError} value not finite, digits outside 1–15, or a unit of another dimension
 * Valid for: every finite number.
 * Source:   iso-80000-1, 7.3 (printing of numbers, from memory)
 * Example:  formatQuantity(0.87, 'ratio') → '0.87'
 */
export function formatQuantity(value: number, dimension: Dimension, options: FormatOptions = {}): string {
  return formatParts(value, dimension, options)
    .map(({ number, unit }) => (unit === '' || unit === '°' ? number + unit : number + narrowSpace + unit))
    .join(narrowSpace);
}
