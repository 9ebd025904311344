import words from '../../../content/strings/explorers.en.json' with { type: 'json' };
import { formatQuantity } from '../../engine/index.ts';
import { fill } from '../strings/fill.ts';

export { fill, words };

/** "12.5 A": three digits. */
export const amperes = (value: number): string => formatQuantity(value, 'current');
export const voltAmperes = (value: number): string => formatQuantity(value, 'apparent-power');
export const watts = (value: number): string => formatQuantity(value, 'real-power');
export const volts = (value: number): string => formatQuantity(value, 'voltage');
export const celsius = (value: number): string =>
  formatQuantity(value, 'temperature', { significantDigits: 'as-is' });
export const duration = (valueS: number): string => formatQuantity(valueS, 'time');
/** "2.04", trailing zeros dropped. */
export const plain = (value: number): string => formatQuantity(value, 'ratio');

/** A share as whole per cent: "87 %". */
export const percent = (ratio: number): string =>
  `${formatQuantity(Math.round(ratio * 100), 'count')}\u202f%`;

/** "25 cycles" */
export const cycles = (count: number): string => formatQuantity(count, 'cycles');

/** Given data as printed, without unit: the numbers at an axis. */
export const axisNumber = (value: number): string =>
  formatQuantity(value, 'ratio', { significantDigits: 'as-is' });

export const axisTime = (valueS: number): string =>
  formatQuantity(valueS, 'time', { significantDigits: 'as-is' });
