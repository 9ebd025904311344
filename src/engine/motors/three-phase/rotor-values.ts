import type { EquivalentCircuit } from './equivalent-circuit.ts';

/** Rotor frequency by reference frequency, 1 at most: beyond standstill the values stay as they are there. */
const share = (frequencyRatio: number, slipRatio: number): number =>
  Math.min(1, Math.abs(slipRatio) * frequencyRatio);

/** Rotor resistance at a slip [Ω], frequencyRatio being supply by reference frequency. */
export function rotorResistanceAt(
  circuit: EquivalentCircuit,
  frequencyRatio: number,
  slipRatio: number,
): number {
  const { rotorResistanceOhm, atStandstill } = circuit;
  if (!atStandstill) return rotorResistanceOhm;
  return (
    rotorResistanceOhm +
    (atStandstill.rotorResistanceOhm - rotorResistanceOhm) * share(frequencyRatio, slipRatio)
  );
}

/** Rotor leakage reactance at a slip [Ω], still at the reference frequency. */
export function rotorReactanceAt(
  circuit: EquivalentCircuit,
  frequencyRatio: number,
  slipRatio: number,
): number {
  const { rotorReactanceOhm, atStandstill } = circuit;
  if (!atStandstill) return rotorReactanceOhm;
  return (
    rotorReactanceOhm +
    (atStandstill.rotorReactanceOhm - rotorReactanceOhm) * share(frequencyRatio, slipRatio)
  );
}
