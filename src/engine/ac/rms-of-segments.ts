import { checkedNumber } from './checked-number.ts';

/** A stretch of time in which a quantity is constant, or runs straight from one value to another. */
export type RmsSegment = {
  /** Length [s], ≥ 0; any other unit does as long as all segments share it. */
  durationS: number;
  /** Value, or value at the start; any unit, any sign. */
  from: number;
  /** Value at the end; left out where the quantity is constant. */
  to?: number;
};

/**
 * Root mean square of a cycle made of level and sloping stretches. A slope from a to b has the mean square
 * (a² + ab + b²)/3, so a ramp from nought counts with a third of its peak squared, not with its mean squared.
 *
 * @param segments  stretches in order; their whole length must be above 0
 * @returns r.m.s. value, ≥ 0, in the unit of the values
 * @throws   {RangeError} a negative or non-finite duration, a non-finite value, or a whole length of 0
 * Formula:  √(Σ tᵢ·(aᵢ² + aᵢbᵢ + bᵢ²)/3 ÷ Σ tᵢ)
 * Valid for: cycles much shorter than the thermal time constant, where heat follows the mean square. For a machine that cools
 *            worse at rest, shorten the resting stretches as its standard or book says before the call.
 * Source:   theraja, ch. 45, ex. 45.5; gupta-singhal, ch. 4, ex. 4.6
 * Example:  rmsOfSegments([{ durationS: 5, from: 0, to: 100 }, { durationS: 10, from: 50 }, { durationS: 3, from: 0 }]) → 48.11
 */
export function rmsOfSegments(segments: readonly RmsSegment[]): number {
  let squareTime = 0;
  let time = 0;
  for (const [index, { durationS, from, to = from }] of segments.entries()) {
    checkedNumber(`segments[${index}].durationS`, durationS, { min: 0 });
    checkedNumber(`segments[${index}].from`, from);
    checkedNumber(`segments[${index}].to`, to);
    squareTime += (durationS * (from * from + from * to + to * to)) / 3;
    time += durationS;
  }
  checkedNumber('whole duration', time, { above: 0 });
  return Math.sqrt(squareTime / time);
}
