/** A settled value and two exponentials dying away: what two nodes do together under a constant cause. */
export interface TwoExponential {
  /** value for t → ∞ */
  readonly steady: number;
  /** distance of the fast node from its target now; dies with the fast time constant */
  readonly fastPart: number;
  readonly slowPart: number;
  /** [s], 0 < fast < slow */
  readonly fastTimeConstantS: number;
  readonly slowTimeConstantS: number;
}

/**
 * Value of the curve after a time.
 *
 * @param curve      settled value, two parts, two time constants [s]
 * @param durationS  time [s], ≥ 0
 * @returns value, in the unit of steady
 * @throws  nothing
 * Formula: h(t) = U + A·e^(−t/τ1) + B·e^(−t/τ2)
 * Source:  foster-notebook
 * Example: twoExponentialAt({ steady: 1, fastPart: -0.3, slowPart: -0.7, fastTimeConstantS: 60, slowTimeConstantS: 1800 }, 60) → 0.2126
 */
export const twoExponentialAt = (curve: TwoExponential, durationS: number): number =>
  curve.steady +
  curve.fastPart * Math.exp(-durationS / curve.fastTimeConstantS) +
  curve.slowPart * Math.exp(-durationS / curve.slowTimeConstantS);

/**
 * The one turning point such a curve can have. It exists when the parts have opposite signs and the fast one is at
 * first the stronger: after a rest the fast node heats up while the slow one still cools (a peak), or the reverse.
 *
 * @param curve  settled value, two parts, two time constants [s]
 * @returns time [s] and value of the turn, and whether it is a peak or a trough; null without a turn after t = 0
 * @throws  nothing
 * Formula: t = ln(−A·τ2 / (B·τ1)) / (1/τ1 − 1/τ2);  h = U + B·e^(−t/τ2)·(1 − τ1/τ2)
 * Source:  derived (from the curve's own derivative)
 * Example: twoExponentialTurn({ steady: 1, fastPart: -0.5, slowPart: 0.4, fastTimeConstantS: 60, slowTimeConstantS: 1800 })?.value → 1.341
 */
export const twoExponentialTurn = (
  curve: TwoExponential,
): { atS: number; value: number; kind: 'peak' | 'trough' } | null => {
  const { fastPart, slowPart, fastTimeConstantS, slowTimeConstantS } = curve;
  const strengthRatio = -(fastPart * slowTimeConstantS) / (slowPart * fastTimeConstantS);
  if (!(strengthRatio > 1 && strengthRatio < Number.POSITIVE_INFINITY)) return null;
  const atS = Math.log(strengthRatio) / (1 / fastTimeConstantS - 1 / slowTimeConstantS);
  const left = slowPart * Math.exp(-atS / slowTimeConstantS);
  return {
    atS,
    value: curve.steady + left * (1 - fastTimeConstantS / slowTimeConstantS),
    kind: fastPart < 0 ? 'peak' : 'trough',
  };
};
