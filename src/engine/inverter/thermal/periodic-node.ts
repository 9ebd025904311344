/** A stretch of a repeating cycle, as one node sees it. */
export interface NodeSegment {
  readonly durationS: number;
  /** value the node would settle at */
  readonly target: number;
  /** may differ between heating and cooling */
  readonly timeConstantS: number;
}

/**
 * Where one node stands at the start of a cycle that has been repeating for ever, and after any number of cycles.
 * One cycle maps the start value x to remain·x + gain; the fixed point of that map is the answer, so nothing is run
 * until it settles.
 *
 * @param cycle.segments  duration [s], target and time constant [s] of each stretch, in order
 * @returns startSettled: value at each cycle's start once settled; remainRatio: share of a start value left after one
 *          cycle (0–1); values are in the unit of target
 * @throws  {RangeError} the cycle lasts no time
 * Formula: x = Σ target·(1 − e^(−t/τ))·e^(−rest) / (1 − e^(−whole))
 * Source:  gupta-singhal, ch. 4, ex. 4.4
 * Example: periodicNode({ segments: [{ durationS: 45, target: 0, timeConstantS: 150 }, { durationS: 30, target: 50, timeConstantS: 110 }] }).startSettled → 27.37
 */
export const periodicNode = (cycle: {
  segments: readonly NodeSegment[];
}): { startSettled: number; remainRatio: number } => {
  let exponent = 0;
  let gain = 0;
  for (const { durationS, target, timeConstantS } of cycle.segments) {
    const passed = -durationS / timeConstantS;
    gain = gain * Math.exp(passed) - target * Math.expm1(passed);
    exponent += passed;
  }
  if (!(exponent < 0)) throw new RangeError('segments: expected a cycle longer than 0 s, found one of 0 s');
  return { startSettled: gain / -Math.expm1(exponent), remainRatio: Math.exp(exponent) };
};
