import { checkedNumber } from '../../ac/index.ts';

/**
 * Equivalent circuit of a single-phase induction motor seen from its main winding. Rotor values are referred to
 * the main winding and stand for its full winding: each of the two fields takes half of them.
 */
export interface SinglePhaseCircuit {
  /** main winding: resistance and leakage reactance [Ω] */
  readonly mainResistanceOhm: number;
  readonly mainReactanceOhm: number;
  /** magnetizing reactance [Ω] */
  readonly magnetizingReactanceOhm: number;
  /** rotor: resistance and leakage reactance [Ω] */
  readonly rotorResistanceOhm: number;
  readonly rotorReactanceOhm: number;
  /** frequency the reactances hold for [Hz] */
  readonly frequencyHz: number;
  readonly polePairs: number;
  /** core, friction and windage loss [W] at rotationalLossSpeedRpm, taken from the shaft */
  readonly rotationalLossW: number;
  /** speed at which the rotational loss was found [rpm] */
  readonly rotationalLossSpeedRpm: number;
}

/** Auxiliary winding, a quarter wave (90 electrical degrees) from the main winding in space. */
export interface AuxiliaryWinding {
  /** effective turns of the auxiliary winding by those of the main winding [1] */
  readonly turnsRatio: number;
  /** the winding's own resistance and leakage reactance [Ω], not referred */
  readonly resistanceOhm: number;
  readonly reactanceOhm: number;
}

/**
 * Hands a circuit through if each of its values can be.
 *
 * @param circuit  the circuit
 * @returns the same circuit
 * @throws  {RangeError} rotor resistance, magnetizing reactance, frequency or loss speed not above 0, another
 *          value below 0, or polePairs not a whole number from 1
 * Valid for: any circuit.
 * Source:  none (input check)
 * Example: checkSinglePhaseCircuit({ mainResistanceOhm: 2.02, mainReactanceOhm: 2.79, magnetizingReactanceOhm: 66.8, rotorResistanceOhm: 4.12, rotorReactanceOhm: 2.12, frequencyHz: 60, polePairs: 2, rotationalLossW: 37, rotationalLossSpeedRpm: 1710 }).polePairs → 2
 */
export const checkSinglePhaseCircuit = (circuit: SinglePhaseCircuit): SinglePhaseCircuit => {
  checkedNumber('mainResistanceOhm', circuit.mainResistanceOhm, { min: 0 });
  checkedNumber('mainReactanceOhm', circuit.mainReactanceOhm, { min: 0 });
  checkedNumber('magnetizingReactanceOhm', circuit.magnetizingReactanceOhm, { above: 0 });
  checkedNumber('rotorResistanceOhm', circuit.rotorResistanceOhm, { above: 0 });
  checkedNumber('rotorReactanceOhm', circuit.rotorReactanceOhm, { min: 0 });
  checkedNumber('frequencyHz', circuit.frequencyHz, { above: 0 });
  checkedNumber('rotationalLossW', circuit.rotationalLossW, { min: 0 });
  checkedNumber('rotationalLossSpeedRpm', circuit.rotationalLossSpeedRpm, { above: 0 });
  if (!Number.isInteger(circuit.polePairs) || circuit.polePairs < 1) {
    throw new RangeError(`polePairs: expected a whole number from 1, found ${circuit.polePairs}`);
  }
  return circuit;
};

/**
 * Hands an auxiliary winding through if each of its values can be.
 *
 * @param auxiliary  the winding
 * @returns the same winding
 * @throws  {RangeError} turns ratio not above 0, resistance or reactance below 0
 * Valid for: any winding.
 * Source:  none (input check)
 * Example: checkAuxiliaryWinding({ turnsRatio: 1.2, resistanceOhm: 9, reactanceOhm: 8 }).turnsRatio → 1.2
 */
export const checkAuxiliaryWinding = (auxiliary: AuxiliaryWinding): AuxiliaryWinding => {
  checkedNumber('turnsRatio', auxiliary.turnsRatio, { above: 0 });
  checkedNumber('resistanceOhm', auxiliary.resistanceOhm, { min: 0 });
  checkedNumber('reactanceOhm', auxiliary.reactanceOhm, { min: 0 });
  return auxiliary;
};
