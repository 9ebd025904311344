import { checkedNumber } from './checked-number.ts';
import { complexAngleDeg, complexMagnitude, complexSum, phasor } from './complex.ts';

/** Current of one phase against its own voltage. */
export type PhaseCurrent = {
  /** r.m.s. current [A], ≥ 0. */
  currentA: number;
  /** Angle by which it lags the voltage of its phase [°]; negative where it leads. Default 0. */
  lagDeg?: number;
};

/**
 * Current in the neutral of a four-wire system: the phasor sum of the three phase currents, not the sum of their sizes. Harmonics of
 * order 3, 9, 15 … are in step in all three phases and add up in full.
 *
 * @param load.phases         the three phases in sequence, each with currentA [A], ≥ 0, and lagDeg [°]
 * @param load.harmonicOrder  order of the harmonic the currents belong to, whole, ≥ 1; default 1
 * @returns currentA, r.m.s. [A], and angleDeg [°] against the voltage of the first phase
 * @throws   {RangeError} a value outside its limits
 * Formula:  I_N = |Σ Iₖ∠(−120°·k·h − φₖ)|, k = 0, 1, 2
 * Valid for: balanced voltages, one frequency; neutral currents of several frequencies add by their squares.
 * Source:   bird, ch. 19, ex. 19.4; mehta, ex. 14.9; kuphaldt, AC ch. 10
 * Example:  neutralCurrent({ phases: [{ currentA: 100 }, { currentA: 75 }, { currentA: 50 }] }).currentA → 43.3
 */
export function neutralCurrent(load: {
  phases: readonly [PhaseCurrent, PhaseCurrent, PhaseCurrent];
  harmonicOrder?: number;
}): { currentA: number; angleDeg: number } {
  const order = checkedNumber('harmonicOrder', load.harmonicOrder ?? 1, { min: 1 });
  if (!Number.isInteger(order))
    throw new RangeError(`harmonicOrder: expected a whole number, found ${order}`);
  const currents = load.phases.map(({ currentA, lagDeg = 0 }, index) => {
    // The remainder keeps multiples of three exactly in step.
    const shiftDeg = -120 * ((index * order) % 3);
    return phasor(
      checkedNumber(`phases[${index}].currentA`, currentA, { min: 0 }),
      shiftDeg - checkedNumber(`phases[${index}].lagDeg`, lagDeg),
    );
  });
  const sum = complexSum(currents);
  return { currentA: complexMagnitude(sum), angleDeg: complexAngleDeg(sum) };
}
