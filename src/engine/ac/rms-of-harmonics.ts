import { checkedNumber } from './checked-number.ts';

/**
 * Root mean square of a quantity known by its direct part and the peaks of its sine parts. Parts of different frequency add by
 * their squares, whatever their phase.
 *
 * @param parts.mean   direct (d.c.) part, any unit, any sign; 0 if left out
 * @param parts.peaks  peak of each sine part, same unit, each of another frequency
 * @returns r.m.s. value, ≥ 0, same unit
 * @throws   {RangeError} a part that is not finite
 * Formula:  √(X₀² + Σ X̂ₕ²/2)
 * Valid for: parts of different frequencies only; two parts of one frequency must be added as phasors first.
 * Source:   bird, ch. 36
 * Example:  rmsOfHarmonics({ peaks: [100, 20, 10] }) → 72.46
 */
export function rmsOfHarmonics(parts: { mean?: number; peaks: readonly number[] }): number {
  const mean = checkedNumber('mean', parts.mean ?? 0);
  const squares = parts.peaks.reduce((sum, peak) => sum + checkedNumber('peak', peak) ** 2 / 2, mean * mean);
  return Math.sqrt(squares);
}
