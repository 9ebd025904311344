/** A phasor, impedance or complex power in rectangular form. Phasors hold r.m.s. values; the angle turns anticlockwise. */
export type Complex = { re: number; im: number };

/**
 * A phasor from its magnitude and angle.
 *
 * @param magnitude  r.m.s. value or modulus, any unit
 * @param angleDeg   angle [°]
 * @returns the phasor, same unit
 * @throws nothing
 * Valid for: all finite numbers.
 * Source:   bird, ch. 23
 * Example:  phasor(10, 90).im → 10
 */
export function phasor(magnitude: number, angleDeg: number): Complex {
  const angle = (angleDeg * Math.PI) / 180;
  return { re: magnitude * Math.cos(angle), im: magnitude * Math.sin(angle) };
}

/**
 * Sum of phasors of one frequency.
 *
 * @param terms  phasors, all in one unit
 * @returns their sum, same unit; nought for an empty list
 * @throws nothing
 * Valid for: all finite numbers.
 * Source:   bird, ch. 23
 * Example:  complexSum([{ re: 1, im: 2 }, { re: 3, im: 4 }]).im → 6
 */
export function complexSum(terms: readonly Complex[]): Complex {
  return terms.reduce((sum, term) => ({ re: sum.re + term.re, im: sum.im + term.im }), { re: 0, im: 0 });
}

/**
 * Product of two complex numbers.
 *
 * @param a  first factor, any unit
 * @param b  second factor, any unit
 * @returns a·b, in the product of the units
 * @throws nothing
 * Valid for: all finite numbers.
 * Source:   bird, ch. 23
 * Example:  complexProduct({ re: 1, im: 2 }, { re: 3, im: 4 }).re → -5
 */
export function complexProduct(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re };
}

/**
 * Quotient of two complex numbers, such as voltage by impedance.
 *
 * @param dividend  any unit
 * @param divisor   any unit, not nought
 * @returns dividend/divisor, in the quotient of the units
 * @throws   {RangeError} divisor nought
 * Valid for: all finite numbers with |divisor|² within the range of a number.
 * Source:   bird, ch. 23
 * Example:  complexQuotient({ re: 240, im: 0 }, { re: 4, im: 3 }).im → -28.8
 */
export function complexQuotient(dividend: Complex, divisor: Complex): Complex {
  const square = divisor.re ** 2 + divisor.im ** 2;
  if (!(square > 0))
    throw new RangeError(`divisor: expected other than nought, found ${divisor.re} + j${divisor.im}`);
  const turned = complexProduct(dividend, complexConjugate(divisor));
  return { re: turned.re / square, im: turned.im / square };
}

/**
 * The complex conjugate: same magnitude, opposite angle.
 *
 * @param value  any unit
 * @returns re − j·im, same unit
 * @throws nothing
 * Valid for: all finite numbers.
 * Source:   bird, ch. 23
 * Example:  complexConjugate({ re: 3, im: 4 }).im → -4
 */
export function complexConjugate(value: Complex): Complex {
  return { re: value.re, im: -value.im };
}

/**
 * Magnitude of a complex number.
 *
 * @param value  any unit
 * @returns √(re² + im²), ≥ 0, same unit
 * @throws nothing
 * Valid for: all finite numbers.
 * Source:   bird, ch. 23
 * Example:  complexMagnitude({ re: 3, im: 4 }) → 5
 */
export function complexMagnitude(value: Complex): number {
  return Math.hypot(value.re, value.im);
}

/**
 * Angle of a complex number.
 *
 * @param value  any unit
 * @returns angle [°], above −180 up to 180; 0 for nought
 * @throws nothing
 * Valid for: all finite numbers.
 * Source:   bird, ch. 23
 * Example:  complexAngleDeg({ re: 4, im: 3 }) → 36.87
 */
export function complexAngleDeg(value: Complex): number {
  return (Math.atan2(value.im, value.re) * 180) / Math.PI;
}
