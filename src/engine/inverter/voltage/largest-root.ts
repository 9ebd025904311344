import { bracketedRoot } from '../bracketed-root.ts';

const polynomialAt = (coefficients: readonly number[], x: number): number => {
  let value = 0;
  for (const coefficient of coefficients) value = value * x + coefficient;
  return value;
};

const derivativeOf = (coefficients: readonly number[]): number[] => {
  const degree = coefficients.length - 1;
  return coefficients.slice(0, degree).map((coefficient, i) => coefficient * (degree - i));
};

/** All points inside (0, 1) where the polynomial changes sign, or touches 0 to the last digit, falling. */
const signChanges = (coefficients: readonly number[]): number[] => {
  if (coefficients.length < 2) return [];
  // Between its turning points a polynomial is monotone: at most one root in each interval.
  const marks = [1, ...signChanges(derivativeOf(coefficients)), 0];
  const roots: number[] = [];
  for (let i = 1; i < marks.length; i++) {
    const upper = marks[i - 1] as number;
    const lower = marks[i] as number;
    const atUpper = polynomialAt(coefficients, upper);
    const atLower = polynomialAt(coefficients, lower);
    if (atUpper !== 0 && atUpper > 0 !== atLower > 0) {
      roots.push(bracketedRoot({ lower, upper, valueAt: (x) => polynomialAt(coefficients, x) }));
    }
  }
  return roots;
};

/**
 * Largest root of a polynomial inside (0, 1) where it changes sign, found between its turning points, which are found
 * in the same way: no starting guess, and no root overlooked.
 *
 * @param coefficients  highest power first
 * @returns the root, or null when the sign does not change inside
 * @throws  nothing
 * Source:  derived (a polynomial is monotone between the roots of its derivative)
 * Example: largestRoot([1, -0.75, 0.125]) → 0.5
 */
export const largestRoot = (coefficients: readonly number[]): number | null =>
  signChanges(coefficients)[0] ?? null;
