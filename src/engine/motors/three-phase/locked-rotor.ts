import type { MachineSupply } from './equivalent-circuit.ts';
import { machineState } from './machine-state.ts';

/**
 * Current and torque of a machine at standstill, once the first cycles are over.
 *
 * @param given.circuit       the machine, see EquivalentCircuit
 * @param given.lineVoltageV  voltage line to line [V], 0 or more
 * @param given.frequencyHz   supply frequency [Hz], above 0
 * @returns lineCurrentA [A], apparentPowerVa [VA], inputPowerW [W], powerFactor [1] and torqueNm [N·m]
 * @throws   {RangeError} a value outside its limits
 * Valid for: steady state; the first half cycle peaks higher.
 * Source:   fitzgerald, ch. 6
 * Example:  lockedRotor({ circuit: exampleCircuit, lineVoltageV: 400, frequencyHz: 50 }).lineCurrentA → 82.5
 */
export function lockedRotor(given: MachineSupply): {
  lineCurrentA: number;
  apparentPowerVa: number;
  inputPowerW: number;
  powerFactor: number;
  torqueNm: number;
} {
  const { lineCurrentA, apparentPowerVa, inputPowerW, powerFactor, electromagneticTorqueNm } = machineState({
    ...given,
    slipRatio: 1,
  });
  return {
    lineCurrentA,
    apparentPowerVa,
    inputPowerW,
    powerFactor,
    torqueNm: electromagneticTorqueNm,
  };
}
