import { checkedNumber } from './checked-number.ts';
import type { Complex } from './complex.ts';

/**
 * Impedance of a resistor, inductor and capacitor in series; parts left out are not there.
 *
 * @param parts.resistanceOhm  resistance [Ω], ≥ 0; default 0
 * @param parts.inductanceH    inductance [H], ≥ 0; default 0
 * @param parts.capacitanceF   capacitance [F], above 0; left out for no capacitor
 * @param parts.frequencyHz    frequency [Hz], above 0
 * @returns impedance [Ω]; a positive imaginary part is inductive
 * @throws   {RangeError} a value outside its limits
 * Formula:  Z = R + j(2πfL − 1/(2πfC))
 * Valid for: linear parts, sinusoidal steady state.
 * Source:   bird, ch. 15, ex. 15.7
 * Example:  seriesImpedance({ resistanceOhm: 4, inductanceH: 0.00955, frequencyHz: 50 }).im → 3.0
 */
export function seriesImpedance(parts: {
  resistanceOhm?: number;
  inductanceH?: number;
  capacitanceF?: number;
  frequencyHz: number;
}): Complex {
  const re = checkedNumber('resistanceOhm', parts.resistanceOhm ?? 0, { min: 0 });
  const inductanceH = checkedNumber('inductanceH', parts.inductanceH ?? 0, { min: 0 });
  const omega = 2 * Math.PI * checkedNumber('frequencyHz', parts.frequencyHz, { above: 0 });
  const { capacitanceF } = parts;
  const capacitive =
    capacitanceF === undefined ? 0 : 1 / (omega * checkedNumber('capacitanceF', capacitanceF, { above: 0 }));
  return { re, im: omega * inductanceH - capacitive };
}
