import { checkedNumber } from './checked-number.ts';

/**
 * Root mean square of evenly spaced samples.
 *
 * @param samples  one or several whole periods, evenly spaced; at least one, all finite
 * @returns r.m.s. value, ≥ 0, in the unit of the samples
 * @throws   {RangeError} no samples, or one that is not finite
 * Formula:  √(Σ xᵢ²/n)
 * Valid for: sampling well above twice the highest frequency present; part of a period gives another figure.
 * Source:   bird, ch. 14
 * Example:  rmsOfSamples([3, -4, 3, -4]) → 3.5355
 */
export function rmsOfSamples(samples: readonly number[]): number {
  checkedNumber('samples.length', samples.length, { min: 1 });
  const squares = samples.reduce((sum, sample) => sum + checkedNumber('sample', sample) ** 2, 0);
  return Math.sqrt(squares / samples.length);
}
