import { type Complex, checkedNumber, complexMagnitude } from '../../ac/index.ts';

/**
 * Capacitor in series with the auxiliary winding that makes a single-phase motor start best.
 *
 * @param start.main         impedance of the main winding with rotor locked [Ω], resistance and reactance above 0
 * @param start.auxiliary    impedance of the auxiliary winding with rotor locked [Ω], resistance above 0, reactance ≥ 0
 * @param start.frequencyHz  frequency [Hz], above 0
 * @param start.aim          'quadrature': the currents stand 90° apart; 'most-torque': the greatest starting torque these windings can give
 * @returns reactanceOhm of the capacitor [Ω], and capacitanceF [F]
 * @throws  {RangeError} a value outside its limits
 * Formula: X_c = X_a + R_a·R_m/X_m for 90°, X_c = X_a + R_a·R_m/(|Z_m| + X_m) for most torque
 * Valid for: standstill, a capacitor without loss; the current through it, and so the voltage over it, can be high.
 * Source:  fitzgerald, ex. 9.1; hubert, ex. 6.2; derived (most torque: the torque factor has its greatest value where its slope is nought)
 * Example: startingCapacitor({ main: { re: 4.5, im: 3.7 }, auxiliary: { re: 9.5, im: 3.5 }, frequencyHz: 60, aim: 'quadrature' }).capacitanceF * 1e6 → 176.2
 */
export const startingCapacitor = (start: {
  main: Complex;
  auxiliary: Complex;
  frequencyHz: number;
  aim: 'quadrature' | 'most-torque';
}): { reactanceOhm: number; capacitanceF: number } => {
  const mainOhm = checkedNumber('main.re', start.main.re, { above: 0 });
  const mainReactanceOhm = checkedNumber('main.im', start.main.im, { above: 0 });
  const auxiliaryOhm = checkedNumber('auxiliary.re', start.auxiliary.re, { above: 0 });
  checkedNumber('auxiliary.im', start.auxiliary.im, { min: 0 });
  checkedNumber('frequencyHz', start.frequencyHz, { above: 0 });
  const divisor =
    start.aim === 'quadrature' ? mainReactanceOhm : complexMagnitude(start.main) + mainReactanceOhm;
  const reactanceOhm = start.auxiliary.im + (auxiliaryOhm * mainOhm) / divisor;
  return { reactanceOhm, capacitanceF: 1 / (2 * Math.PI * start.frequencyHz * reactanceOhm) };
};
