import type { Complex } from '../../ac/complex.ts';
import type { EquivalentCircuit } from './equivalent-circuit.ts';
import { rotorReactanceAt, rotorResistanceAt } from './rotor-values.ts';

/** One phase winding per volt across it: everything in the circuit is proportional to that voltage. */
export type PhasePerVolt = {
  /** Stator current [A/V = S]. */
  stator: Complex;
  /** Rotor current, referred [A/V = S]. */
  rotor: Complex;
  /** Voltage across the shunt [V/V]. */
  gap: Complex;
};

/**
 * Solves one phase by admittances, so that neither no slip (an open rotor branch) nor a missing shunt divides by nought:
 * E/V = 1/(1 + Z1·Y),  I1 = E·Y  with  Y = 1/Rc − j/Xm + s/(R2 + j·s·X2).
 */
export function solvePhase(
  circuit: EquivalentCircuit,
  frequencyRatio: number,
  slipRatio: number,
): PhasePerVolt {
  const r1 = circuit.statorResistanceOhm;
  const x1 = circuit.statorReactanceOhm * frequencyRatio;
  const r2 = rotorResistanceAt(circuit, frequencyRatio, slipRatio);
  const sx2 = slipRatio * rotorReactanceAt(circuit, frequencyRatio, slipRatio) * frequencyRatio;
  const rotorScale = slipRatio / (r2 * r2 + sx2 * sx2);
  const rotorG = rotorScale * r2;
  const rotorB = -rotorScale * sx2;
  const g = rotorG + (circuit.coreLossResistanceOhm === null ? 0 : 1 / circuit.coreLossResistanceOhm);
  const b =
    rotorB -
    (circuit.magnetisingReactanceOhm === null ? 0 : 1 / (circuit.magnetisingReactanceOhm * frequencyRatio));
  const re = 1 + r1 * g - x1 * b;
  const im = r1 * b + x1 * g;
  const square = re * re + im * im;
  const gapRe = re / square;
  const gapIm = -im / square;
  return {
    stator: { re: gapRe * g - gapIm * b, im: gapRe * b + gapIm * g },
    rotor: { re: gapRe * rotorG - gapIm * rotorB, im: gapRe * rotorB + gapIm * rotorG },
    gap: { re: gapRe, im: gapIm },
  };
}

/** Power across the air gap of one phase per volt squared across the winding [W/V² = S]. */
export function gapConductance(
  circuit: EquivalentCircuit,
  frequencyRatio: number,
  slipRatio: number,
): number {
  const { gap, rotor } = solvePhase(circuit, frequencyRatio, slipRatio);
  return gap.re * rotor.re + gap.im * rotor.im;
}
