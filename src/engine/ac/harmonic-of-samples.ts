import { checkedNumber } from './checked-number.ts';
import { type Complex, complexSum, phasor } from './complex.ts';

/**
 * One harmonic of a sampled period, as an r.m.s. phasor against a cosine that starts with the first sample.
 *
 * @param samples  exactly one period, evenly spaced, all finite
 * @param order    1 for the fundamental; whole, ≥ 1, below half the number of samples
 * @returns r.m.s. phasor in the unit of the samples
 * @throws   {RangeError} a sample that is not finite, or an order outside its limits
 * Formula:  √2/n · Σ xᵢ·e^(−j2πhi/n)
 * Valid for: signals without parts above half the sampling rate.
 * Source:   bird, ch. 36
 * Example:  harmonicOfSamples([1, 0, -1, 0], 1).re → 0.7071
 */
export function harmonicOfSamples(samples: readonly number[], order: number): Complex {
  checkedNumber('order', order, { min: 1, below: samples.length / 2 });
  if (!Number.isInteger(order)) throw new RangeError(`order: expected a whole number, found ${order}`);
  const terms = samples.map((sample, index) =>
    phasor(checkedNumber('sample', sample), (-360 * ((order * index) % samples.length)) / samples.length),
  );
  const sum = complexSum(terms);
  const scale = Math.SQRT2 / samples.length;
  return { re: sum.re * scale, im: sum.im * scale };
}
