import {
  type Complex,
  checkedNumber,
  complexAngleDeg,
  complexMagnitude,
  complexQuotient,
  complexSum,
} from '../../ac/index.ts';

/**
 * Currents of main and auxiliary winding at standstill, and the angle between them that makes the starting torque.
 *
 * @param start.voltageV   supply voltage [V], ≥ 0
 * @param start.main       impedance of the main winding with rotor locked [Ω], not nought
 * @param start.auxiliary  impedance of the auxiliary branch with rotor locked [Ω], not nought, with its capacitor or resistor
 * @returns currents mainA, auxiliaryA and lineA [A] with angles to the voltage [°], splitDeg by which the auxiliary
 *          current leads the main one [°], and torqueFactorA2 [A²], to which the starting torque is proportional
 * @throws  {RangeError} voltage below 0, or an impedance of nought
 * Formula: T = k·I_m·I_a·sin α
 * Valid for: standstill, where the two windings do not act on each other; below 0 the motor starts backwards.
 * Source:  hubert, ex. 6.1 and 6.2
 * Example: lockedRotorSplit({ voltageV: 120, main: { re: 2, im: 3.5 }, auxiliary: { re: 9.15, im: 8.4 } }).splitDeg → 17.70
 */
export const lockedRotorSplit = (start: {
  voltageV: number;
  main: Complex;
  auxiliary: Complex;
}): {
  mainA: number;
  mainAngleDeg: number;
  auxiliaryA: number;
  auxiliaryAngleDeg: number;
  lineA: number;
  lineAngleDeg: number;
  splitDeg: number;
  torqueFactorA2: number;
} => {
  const voltage = { re: checkedNumber('voltageV', start.voltageV, { min: 0 }), im: 0 };
  const main = complexQuotient(voltage, start.main);
  const auxiliary = complexQuotient(voltage, start.auxiliary);
  const line = complexSum([main, auxiliary]);
  return {
    mainA: complexMagnitude(main),
    mainAngleDeg: complexAngleDeg(main),
    auxiliaryA: complexMagnitude(auxiliary),
    auxiliaryAngleDeg: complexAngleDeg(auxiliary),
    lineA: complexMagnitude(line),
    lineAngleDeg: complexAngleDeg(line),
    splitDeg: complexAngleDeg(start.main) - complexAngleDeg(start.auxiliary),
    torqueFactorA2: main.re * auxiliary.im - main.im * auxiliary.re,
  };
};
