import { checkedNumber } from '../../ac/checked-number.ts';

/** Rotor resistance and leakage reactance, referred to the stator. */
export type RotorValues = { rotorResistanceOhm: number; rotorReactanceOhm: number };

/**
 * One phase winding of a three-phase induction motor with a cage rotor, everything referred to the stator:
 * R1 + jX1 in series with the parallel of Rc, jXm and the rotor's R2/s + jX2. Reactances hold at the reference
 * frequency and grow with frequency; resistances do not change with it.
 */
export type EquivalentCircuit = {
  /** How the three windings are joined; the ohms are those of one winding. */
  connection: 'star' | 'delta';
  polePairs: number;
  /** Frequency at which the reactances were measured [Hz]. */
  referenceFrequencyHz: number;
  statorResistanceOhm: number;
  statorReactanceOhm: number;
  /** null where the shunt is neglected. */
  magnetisingReactanceOhm: number | null;
  /** In parallel with the magnetising reactance; null where the loss in the iron is neglected or counted as rotational. */
  coreLossResistanceOhm: number | null;
  /**
   * Ends of a straight line in rotor frequency where those for standstill are given too: bars carry their current near the
   * surface while the rotor slips fast (more resistance), and the leakage path saturates (less reactance).
   */
  atStandstill?: RotorValues;
  /** Friction, windage and stray loss at the synchronous speed of the reference frequency [W]; falls with the square of speed. */
  rotationalLossW?: number;
} & RotorValues;

/** A machine on its supply. */
export type MachineSupply = { circuit: EquivalentCircuit; lineVoltageV: number; frequencyHz: number };

function checkRotor(rotor: RotorValues, where: string): void {
  checkedNumber(`${where}rotorResistanceOhm`, rotor.rotorResistanceOhm, { above: 0 });
  checkedNumber(`${where}rotorReactanceOhm`, rotor.rotorReactanceOhm, { min: 0 });
}

/**
 * Hands a circuit through if each of its values can be.
 *
 * @param circuit  see EquivalentCircuit
 * @returns the same circuit
 * @throws   {RangeError} naming the field, what was expected and what was found
 * Valid for: any circuit.
 * Source:   none (input check)
 * Example:  checkedCircuit(exampleCircuit).polePairs → 2
 */
export function checkedCircuit(circuit: EquivalentCircuit): EquivalentCircuit {
  const { connection, polePairs } = circuit;
  if (connection !== 'star' && connection !== 'delta')
    throw new RangeError(`connection: expected star or delta, found ${String(connection)}`);
  checkedNumber('polePairs', polePairs, { min: 1 });
  if (!Number.isInteger(polePairs))
    throw new RangeError(`polePairs: expected a whole number, found ${polePairs}`);
  checkedNumber('referenceFrequencyHz', circuit.referenceFrequencyHz, { above: 0 });
  checkedNumber('statorResistanceOhm', circuit.statorResistanceOhm, { min: 0 });
  checkedNumber('statorReactanceOhm', circuit.statorReactanceOhm, { min: 0 });
  if (circuit.magnetisingReactanceOhm !== null)
    checkedNumber('magnetisingReactanceOhm', circuit.magnetisingReactanceOhm, { above: 0 });
  if (circuit.coreLossResistanceOhm !== null)
    checkedNumber('coreLossResistanceOhm', circuit.coreLossResistanceOhm, { above: 0 });
  checkRotor(circuit, '');
  if (circuit.atStandstill) checkRotor(circuit.atStandstill, 'atStandstill.');
  checkedNumber('rotationalLossW', circuit.rotationalLossW ?? 0, { min: 0 });
  return circuit;
}

/** Throws a RangeError unless circuit, voltage and frequency can be. */
export function checkSupply({ circuit, lineVoltageV, frequencyHz }: MachineSupply): void {
  checkedCircuit(circuit);
  checkedNumber('lineVoltageV', lineVoltageV, { min: 0 });
  checkedNumber('frequencyHz', frequencyHz, { above: 0 });
}
