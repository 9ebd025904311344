import { checkedCircuit, type EquivalentCircuit } from '../three-phase/equivalent-circuit.ts';
import { fieldRadPerS, type RunUpMachine } from './run-up-machine.ts';

/**
 * A three-phase cage motor as a run-up needs it. The same circuit as `machineState`, written for a loop that allocates
 * nothing; a test holds the two together.
 *
 * @param circuit  the motor's equivalent circuit
 * @returns the machine
 * @throws  {RangeError} as `checkedCircuit`
 * Valid for: balanced sinusoidal supply, quasi-steady
 * Formula: I = Y·V, T = k·V², friction ∝ speed
 * Source:  fitzgerald, ch. 6
 * Example: threePhaseRunUpMachine(exampleCircuit).phases → 3
 */
export const threePhaseRunUpMachine = (circuit: EquivalentCircuit): RunUpMachine => {
  const { polePairs, referenceFrequencyHz, rotorResistanceOhm, rotorReactanceOhm } = checkedCircuit(circuit);
  const { statorResistanceOhm: r1, statorReactanceOhm, rotationalLossW = 0, connection } = circuit;
  const still = circuit.atStandstill ?? circuit;
  const moreOhm = still.rotorResistanceOhm - rotorResistanceOhm;
  const moreReactanceOhm = still.rotorReactanceOhm - rotorReactanceOhm;
  const coreS = circuit.coreLossResistanceOhm === null ? 0 : 1 / circuit.coreLossResistanceOhm;
  const shuntS = circuit.magnetisingReactanceOhm === null ? 0 : 1 / circuit.magnetisingReactanceOhm;
  // Counted as star: a winding in delta has three times its admittance there.
  const windings = connection === 'delta' ? 3 : 1;
  return {
    phases: 3,
    polePairs,
    frictionNmS: rotationalLossW / fieldRadPerS(polePairs, referenceFrequencyHz) ** 2,
    answer: (slipRatio, frequencyHz, _isSwitchOpen, into) => {
      const ratio = frequencyHz / referenceFrequencyHz;
      const depth = Math.min(1, Math.abs(slipRatio) * ratio);
      const x1 = statorReactanceOhm * ratio;
      const r2 = rotorResistanceOhm + moreOhm * depth;
      const sx2 = slipRatio * ratio * (rotorReactanceOhm + moreReactanceOhm * depth);
      const scale = slipRatio / (r2 * r2 + sx2 * sx2);
      const g = scale * r2 + coreS;
      const b = -scale * sx2 - shuntS / ratio;
      const re = 1 + r1 * g - x1 * b;
      const im = r1 * b + x1 * g;
      const gapSquare = 1 / (re * re + im * im);
      into.conductanceS = windings * gapSquare * (re * g + im * b);
      into.susceptanceS = windings * gapSquare * (re * b - im * g);
      const gapW = 3 * windings * gapSquare * scale * r2;
      into.torqueNmPerV2 = gapW / fieldRadPerS(polePairs, frequencyHz);
      into.rotorLossWPerV2 = gapW * slipRatio;
    },
  };
};
