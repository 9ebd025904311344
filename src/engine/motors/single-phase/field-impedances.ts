import type { SinglePhaseCircuit } from './single-phase-circuit.ts';

/** What the two revolving fields put in series with the main winding [Ω]; each holds its factor of one half. */
export interface FieldImpedances {
  readonly forwardOhm: number;
  readonly forwardReactanceOhm: number;
  readonly backwardOhm: number;
  readonly backwardReactanceOhm: number;
}

/** ½·(jXm ∥ (R₂/s + jX₂)), multiplied out so that slip nought needs no division. */
const resistanceAt = (circuit: SinglePhaseCircuit, slip: number, square: number): number =>
  (0.5 * slip * circuit.magnetizingReactanceOhm ** 2 * circuit.rotorResistanceOhm) / square;

const reactanceAt = (circuit: SinglePhaseCircuit, slip: number, square: number): number => {
  const { magnetizingReactanceOhm: xm, rotorReactanceOhm: x2, rotorResistanceOhm: r2 } = circuit;
  return (0.5 * xm * (r2 * r2 + slip * slip * x2 * (x2 + xm))) / square;
};

const squareAt = (circuit: SinglePhaseCircuit, slip: number): number =>
  circuit.rotorResistanceOhm ** 2 +
  (slip * (circuit.rotorReactanceOhm + circuit.magnetizingReactanceOhm)) ** 2;

/**
 * Impedances of the forward and the backward revolving field, seen from the main winding.
 *
 * @param circuit    the circuit [Ω]
 * @param slipRatio  slip against the forward field [1]: 0 at synchronous speed, 1 at standstill
 * @returns resistance and reactance of both fields [Ω], each with its factor of one half
 * @throws  nothing (the circuit is checked by the functions that take one from outside)
 * Formula: ½·jXm·(R₂/s + jX₂) / (R₂/s + j(X₂ + Xm)), the backward field with 2 − s for s
 * Valid for: any finite slip.
 * Source:  fitzgerald, ch. 9
 * Example: fieldImpedances({ mainResistanceOhm: 2.02, mainReactanceOhm: 2.79, magnetizingReactanceOhm: 66.8, rotorResistanceOhm: 4.12, rotorReactanceOhm: 2.12, frequencyHz: 60, polePairs: 2, rotationalLossW: 37, rotationalLossSpeedRpm: 1710 }, 0.05).forwardOhm → 15.931
 */
export const fieldImpedances = (circuit: SinglePhaseCircuit, slipRatio: number): FieldImpedances => {
  const backwardSlip = 2 - slipRatio;
  const forward = squareAt(circuit, slipRatio);
  const backward = squareAt(circuit, backwardSlip);
  return {
    forwardOhm: resistanceAt(circuit, slipRatio, forward),
    forwardReactanceOhm: reactanceAt(circuit, slipRatio, forward),
    backwardOhm: resistanceAt(circuit, backwardSlip, backward),
    backwardReactanceOhm: reactanceAt(circuit, backwardSlip, backward),
  };
};
