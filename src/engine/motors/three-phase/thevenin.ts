import { type Complex, complexProduct, complexQuotient } from '../../ac/complex.ts';
import type { EquivalentCircuit } from './equivalent-circuit.ts';

/** What the rotor branch sees: a source behind an impedance. */
export type TheveninStator = { voltageRatio: Complex; impedance: Complex };

/** Thévenin equivalent of stator and shunt: V_th/V = 1/(1 + Z1·Y0), Z_th = Z1/(1 + Z1·Y0), Y0 = 1/Rc − j/Xm. */
export function theveninStator(circuit: EquivalentCircuit, frequencyRatio: number): TheveninStator {
  const { coreLossResistanceOhm, magnetisingReactanceOhm } = circuit;
  const stator = { re: circuit.statorResistanceOhm, im: circuit.statorReactanceOhm * frequencyRatio };
  const shunt = {
    re: coreLossResistanceOhm === null ? 0 : 1 / coreLossResistanceOhm,
    im: magnetisingReactanceOhm === null ? 0 : -1 / (magnetisingReactanceOhm * frequencyRatio),
  };
  const { re, im } = complexProduct(stator, shunt);
  const divisor = { re: 1 + re, im };
  return {
    voltageRatio: complexQuotient({ re: 1, im: 0 }, divisor),
    impedance: complexQuotient(stator, divisor),
  };
}

/** Slip of the largest torque for a rotor whose values do not change: R2/√(R_th² + (X_th + X2)²). */
export function breakdownSlipOf(
  circuit: EquivalentCircuit,
  frequencyRatio: number,
  rotorResistanceOhm: number,
  rotorReactanceOhm: number,
): number {
  const { impedance } = theveninStator(circuit, frequencyRatio);
  return rotorResistanceOhm / Math.hypot(impedance.re, impedance.im + rotorReactanceOhm * frequencyRatio);
}
