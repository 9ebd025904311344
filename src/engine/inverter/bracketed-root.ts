/**
 * Root of a continuous function between two points where it has opposite signs (Chandrupatla's method:
 * inverse quadratic interpolation where that is safe, halving otherwise).
 *
 * @param problem.lower    one end
 * @param problem.upper    the other end
 * @param problem.valueAt  the function
 * @returns the root, to the last digits a number can hold
 * @throws  {RangeError} the ends do not bracket a root
 * Source:  chandrupatla (from memory)
 * Example: bracketedRoot({ lower: 0, upper: 2, valueAt: (x) => x * x - 2 }) → 1.414214
 */
export const bracketedRoot = (problem: {
  lower: number;
  upper: number;
  valueAt: (x: number) => number;
}): number => {
  const { valueAt } = problem;
  let a = problem.upper;
  let b = problem.lower;
  let fa = valueAt(a);
  let fb = valueAt(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa > 0 !== fb > 0) || Number.isNaN(fa) || Number.isNaN(fb)) {
    throw new RangeError(`bracketedRoot: expected opposite signs at ${b} and ${a}, found ${fb} and ${fa}`);
  }
  let share = 0.5;
  for (let round = 0; round < 200; round++) {
    const x = a + share * (b - a);
    const fx = valueAt(x);
    // c is the point given up, b the one on the other side of the root, a the newest.
    const sameSide = fx > 0 === fa > 0;
    const c = sameSide ? a : b;
    const fc = sameSide ? fa : fb;
    if (!sameSide) {
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    if (fa === 0) return a;
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const shortest = (2 * Number.EPSILON * Math.abs(best) + Number.MIN_VALUE) / Math.abs(b - a);
    if (!(shortest < 0.5)) return best;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const safe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
    const inverse =
      ((fa / (fb - fa)) * fc) / (fb - fc) + ((((c - a) / (b - a)) * fa) / (fc - fa)) * (fb / (fc - fb));
    share = Math.min(1 - shortest, Math.max(shortest, safe ? inverse : 0.5));
  }
  return a;
};
