import { type Complex, complexConjugate, complexMagnitude, complexProduct } from './complex.ts';

/**
 * Real, reactive and apparent power from the phasors of voltage and current.
 *
 * @param voltage  r.m.s. voltage phasor [V]
 * @param current  r.m.s. current phasor [A], against the same reference
 * @returns realPowerW [W], reactivePowerVar [var] (positive where the current lags) and apparentPowerVa [VA]
 * @throws nothing
 * Formula:  S = V·I*
 * Valid for: sinusoidal steady state; with the current flowing into the load, positive real power is consumed.
 * Source:   bird, ch. 26, ex. 26.2
 * Example:  complexPower({ re: 120, im: 200 }, { re: 15, im: 8 }).reactivePowerVar → 2040
 */
export function complexPower(
  voltage: Complex,
  current: Complex,
): { realPowerW: number; reactivePowerVar: number; apparentPowerVa: number } {
  const power = complexProduct(voltage, complexConjugate(current));
  return { realPowerW: power.re, reactivePowerVar: power.im, apparentPowerVa: complexMagnitude(power) };
}
