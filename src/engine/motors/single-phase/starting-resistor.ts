import { type Complex, checkedNumber, complexAngleDeg } from '../../ac/index.ts';

/**
 * Resistance to add to the auxiliary winding so that its starting current leads that of the main winding by a wanted angle.
 *
 * @param start.main       impedance of the main winding with rotor locked [Ω], resistance and reactance above 0
 * @param start.auxiliary  impedance of the auxiliary winding with rotor locked [Ω], resistance ≥ 0, reactance above 0
 * @param start.splitDeg   wanted angle between the currents [°], above 0 and below the angle of the main winding
 * @returns resistance to add [Ω]
 * @throws  {RangeError} a value outside its limits, or the windings are already split further than that
 * Formula: R = X_a / tan(θ_main − α) − R_a
 * Valid for: standstill.
 * Source:  hubert, ex. 6.1
 * Example: startingResistor({ main: { re: 2, im: 3.5 }, auxiliary: { re: 9.15, im: 8.4 }, splitDeg: 30 }).resistanceOhm → 5.25
 */
export const startingResistor = (start: {
  main: Complex;
  auxiliary: Complex;
  splitDeg: number;
}): { resistanceOhm: number } => {
  const { main, auxiliary } = start;
  checkedNumber('main.re', main.re, { above: 0 });
  checkedNumber('main.im', main.im, { above: 0 });
  checkedNumber('auxiliary.re', auxiliary.re, { min: 0 });
  checkedNumber('auxiliary.im', auxiliary.im, { above: 0 });
  const mainDeg = complexAngleDeg(main);
  const alreadyDeg = Math.max(0, mainDeg - complexAngleDeg(auxiliary));
  checkedNumber('splitDeg', start.splitDeg, { min: alreadyDeg, below: mainDeg });
  const auxiliaryRad = ((mainDeg - start.splitDeg) * Math.PI) / 180;
  return { resistanceOhm: Math.max(0, auxiliary.im / Math.tan(auxiliaryRad) - auxiliary.re) };
};
