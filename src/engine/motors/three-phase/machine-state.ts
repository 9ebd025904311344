import { checkedNumber } from '../../ac/checked-number.ts';
import type { Complex } from '../../ac/complex.ts';
import { checkSupply, type EquivalentCircuit, type MachineSupply } from './equivalent-circuit.ts';
import { rotorResistanceAt } from './rotor-values.ts';
import { solvePhase } from './solve-phase.ts';

/** Steady running of a three-phase induction machine; losses and powers are those of all three phases. */
export type MachineState = {
  slipRatio: number;
  speedRadPerS: number;
  speedRpm: number;
  /** In each supply conductor. */
  lineCurrentA: number;
  /** In each winding: the line current in star, 1/√3 of it in delta. */
  phaseCurrentA: number;
  /** The same as a phasor, against the voltage of its winding at 0°. */
  phaseCurrent: Complex;
  /** In the rotor, referred to the stator winding. */
  rotorCurrentA: number;
  /** Real by apparent power; negative when generating. */
  powerFactor: number;
  apparentPowerVa: number;
  inputPowerW: number;
  reactivePowerVar: number;
  statorLossW: number;
  coreLossW: number;
  airGapPowerW: number;
  rotorLossW: number;
  /** Turned from electrical into mechanical: air-gap power less loss in the rotor. */
  mechanicalPowerW: number;
  rotationalLossW: number;
  shaftPowerW: number;
  electromagneticTorqueNm: number;
  shaftTorqueNm: number;
  /** Shaft by input power while the machine drives its load, 0 otherwise. */
  efficiencyRatio: number;
};

/**
 * What a three-phase induction machine does at a slip: current, power from the supply to the shaft, losses, torque.
 *
 * @param given.circuit       the machine, see EquivalentCircuit
 * @param given.lineVoltageV  voltage line to line [V], 0 or more
 * @param given.frequencyHz   supply frequency [Hz], above 0
 * @param given.slipRatio     slip [1]: 1 at standstill, 0 at synchronous speed, negative when generating, above 1 when braking
 * @returns the state, see MachineState
 * @throws   {RangeError} a value outside its limits
 * Formula:  P_gap = 3·I2²·R2/s;  T = P_gap/ω_s;  P_mech = (1 − s)·P_gap
 * Valid for: balanced sinusoidal supply, steady state; reactances ∝ frequency, core-loss resistance constant, rotational loss
 *            (friction, windage and stray together) ∝ speed².
 * Source:   fitzgerald, ch. 6
 * Example:  machineState({ circuit: exampleCircuit, lineVoltageV: 400, frequencyHz: 50, slipRatio: 1 }).shaftPowerW → 0
 */
export function machineState(given: MachineSupply & { slipRatio: number }): MachineState {
  checkSupply(given);
  const { circuit, lineVoltageV, frequencyHz } = given;
  const slipRatio = checkedNumber('slipRatio', given.slipRatio);
  const isDelta = circuit.connection === 'delta';
  const voltageV = isDelta ? lineVoltageV : lineVoltageV / Math.sqrt(3);
  const frequencyRatio = frequencyHz / circuit.referenceFrequencyHz;
  const { stator, rotor, gap } = solvePhase(circuit, frequencyRatio, slipRatio);

  const synchronousRadPerS = (2 * Math.PI * frequencyHz) / circuit.polePairs;
  const speedRadPerS = (1 - slipRatio) * synchronousRadPerS;
  const threeSquare = 3 * voltageV * voltageV;
  const statorSquare = stator.re ** 2 + stator.im ** 2;
  const rotorSquare = rotor.re ** 2 + rotor.im ** 2;
  const phaseCurrentA = voltageV * Math.sqrt(statorSquare);
  const coreG = circuit.coreLossResistanceOhm === null ? 0 : 1 / circuit.coreLossResistanceOhm;
  const airGapPowerW = threeSquare * (gap.re * rotor.re + gap.im * rotor.im);
  const rotorLossW = threeSquare * rotorSquare * rotorResistanceAt(circuit, frequencyRatio, slipRatio);
  const inputPowerW = threeSquare * stator.re;
  const apparentPowerVa = 3 * voltageV * phaseCurrentA;
  const mechanicalPowerW = (1 - slipRatio) * airGapPowerW;
  const rotationalLossW = (circuit.rotationalLossW ?? 0) * ((1 - slipRatio) * frequencyRatio) ** 2;
  const shaftPowerW = mechanicalPowerW - rotationalLossW;
  const electromagneticTorqueNm = airGapPowerW / synchronousRadPerS;
  return {
    slipRatio,
    speedRadPerS,
    speedRpm: (speedRadPerS * 30) / Math.PI,
    lineCurrentA: isDelta ? Math.sqrt(3) * phaseCurrentA : phaseCurrentA,
    phaseCurrentA,
    phaseCurrent: { re: voltageV * stator.re, im: voltageV * stator.im },
    rotorCurrentA: voltageV * Math.sqrt(rotorSquare),
    powerFactor: statorSquare > 0 ? stator.re / Math.sqrt(statorSquare) : 0,
    apparentPowerVa,
    inputPowerW,
    reactivePowerVar: -threeSquare * stator.im,
    statorLossW: threeSquare * statorSquare * circuit.statorResistanceOhm,
    coreLossW: threeSquare * (gap.re ** 2 + gap.im ** 2) * coreG,
    airGapPowerW,
    rotorLossW,
    mechanicalPowerW,
    rotationalLossW,
    shaftPowerW,
    electromagneticTorqueNm,
    shaftTorqueNm: electromagneticTorqueNm - rotationalTorque(circuit, speedRadPerS),
    efficiencyRatio: shaftPowerW > 0 && inputPowerW > 0 ? shaftPowerW / inputPowerW : 0,
  };
}

/** Torque of the rotational loss [N·m]: loss ∝ speed² makes it proportional to speed, nought at standstill. */
export function rotationalTorque(circuit: EquivalentCircuit, speedRadPerS: number): number {
  const referenceRadPerS = (2 * Math.PI * circuit.referenceFrequencyHz) / circuit.polePairs;
  return ((circuit.rotationalLossW ?? 0) * speedRadPerS) / referenceRadPerS ** 2;
}
