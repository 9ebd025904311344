import { type Complex, complexMagnitude, complexQuotient, complexSum } from './complex.ts';

/**
 * Impedance of branches in parallel, each given by its own impedance (see seriesImpedance).
 *
 * @param branches  impedances [Ω] at one frequency, at least one
 * @returns impedance of all together [Ω]; nought if a branch is a short circuit
 * @throws   {RangeError} no branch, or lossless branches in resonance, whose impedance has no limit
 * Formula:  1/Z = Σ 1/Zᵢ
 * Valid for: linear branches, sinusoidal steady state.
 * Source:   bird, ch. 16, ex. 16.6
 * Example:  parallelImpedance([{ re: 6, im: 0 }, { re: 3, im: 0 }]).re → 2
 */
export function parallelImpedance(branches: readonly Complex[]): Complex {
  if (branches.length === 0) throw new RangeError('branches: expected at least one, found none');
  if (branches.some((branch) => complexMagnitude(branch) === 0)) return { re: 0, im: 0 };
  const one = { re: 1, im: 0 };
  return complexQuotient(one, complexSum(branches.map((branch) => complexQuotient(one, branch))));
}
