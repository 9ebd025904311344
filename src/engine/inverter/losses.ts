import type { LossCoefficients } from './model.ts';

/**
 * Loss coefficients from the datasheet's idle loss and its two efficiencies.
 *
 * @param given.idleLossW            loss with nothing connected [W], ≥ 0
 * @param given.efficiencyHalfRatio  at half the continuous rating, power factor 1 (0–1)
 * @param given.efficiencyFullRatio  at the continuous rating, power factor 1 (0–1)
 * @param given.continuousA          continuous rating [A], > 0
 * @param given.acNominalV           nominal output voltage [V], > 0
 * @returns a [W], b [W/A], c [W/A²]; b or c comes out negative when the three figures contradict each other
 * @throws  nothing
 * Formula: a + b·I + c·I² = V·I·(1/η − 1) at I and at I/2, a = idle loss
 * Source:  common-practice (quadratic loss curve of a converter)
 * Example: lossCoefficients({ idleLossW: 20, efficiencyHalfRatio: 0.94, efficiencyFullRatio: 0.92, continuousA: 10, acNominalV: 230 }).squareWPerA2 → 1.464
 */
export const lossCoefficients = (given: {
  idleLossW: number;
  efficiencyHalfRatio: number;
  efficiencyFullRatio: number;
  continuousA: number;
  acNominalV: number;
}): LossCoefficients => {
  const fullW = given.continuousA * given.acNominalV;
  const loadLossW = fullW * (1 / given.efficiencyFullRatio - 1) - given.idleLossW;
  const halfLoadLossW = (fullW / 2) * (1 / given.efficiencyHalfRatio - 1) - given.idleLossW;
  return {
    constantW: given.idleLossW,
    linearWPerA: (4 * halfLoadLossW - loadLossW) / given.continuousA,
    squareWPerA2: (2 * loadLossW - 4 * halfLoadLossW) / given.continuousA ** 2,
  };
};

/**
 * Loss at an output current. Power factor does not matter: the current alone heats.
 *
 * @param losses    coefficients a [W], b [W/A], c [W/A²]
 * @param currentA  r.m.s. output current [A], ≥ 0; null when the unit is off
 * @returns loss [W]; 0 when off
 * @throws  nothing
 * Source:  common-practice
 * Example: lossesW({ constantW: 20, linearWPerA: 3, squareWPerA2: 1 }, 10) → 150
 */
export const lossesW = (losses: LossCoefficients, currentA: number | null): number =>
  currentA === null ? 0 : losses.constantW + currentA * (losses.linearWPerA + currentA * losses.squareWPerA2);

/**
 * The current at which a given loss arises: the inverse of `lossesW`.
 *
 * @param losses  coefficients a [W], b [W/A], c [W/A²], b and c not negative and not both 0
 * @param lossW   loss [W]
 * @returns current [A]; 0 when the loss is not above the loss at no load
 * @throws  nothing
 * Formula: I = 2k / (b + √(b² + 4·c·k)), k = loss − a: the form that survives c = 0
 * Source:  common-practice
 * Example: currentForLossA({ constantW: 20, linearWPerA: 3, squareWPerA2: 1 }, 150) → 10
 */
export const currentForLossA = (losses: LossCoefficients, lossW: number): number => {
  const { linearWPerA: b, squareWPerA2: c } = losses;
  const k = lossW - losses.constantW;
  return k > 0 ? (2 * k) / (b + Math.sqrt(b * b + 4 * c * k)) : 0;
};
