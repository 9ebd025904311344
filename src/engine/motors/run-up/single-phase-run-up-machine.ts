import { SWITCH_CLOSES_AT_SLIP, SWITCH_OPENS_AT_SLIP } from '../single-phase/auxiliary-for.ts';
import { type SinglePhaseMotor, singlePhaseMotorState } from '../single-phase/single-phase-motor-state.ts';
import type { RunUpMachine } from './run-up-machine.ts';

const nearNought = 1e-9;

/**
 * A single-phase motor with its auxiliary winding, capacitors and centrifugal switch as a run-up needs it.
 *
 * @param motor  the motor
 * @returns the machine
 * @throws  {RangeError} as `singlePhaseMotorState`
 * Valid for: the frequency of its circuit only
 * Formula: I = Y·V, T = k·V², friction ∝ speed
 * Source:  fitzgerald, ch. 9
 * Example: singlePhaseRunUpMachine(exampleSinglePhaseMotor('capacitor-start')).speedSwitch.opensAtRatio → 0.75
 */
export const singlePhaseRunUpMachine = (motor: SinglePhaseMotor): RunUpMachine => {
  const { circuit, switchSlipRatio = SWITCH_OPENS_AT_SLIP, recloseSlipRatio } = motor;
  const closes = recloseSlipRatio ?? Math.max(switchSlipRatio, SWITCH_CLOSES_AT_SLIP);
  // The run-up keeps the switch where it is until the speed at which it moves; so each side goes on beyond it.
  const closed = { ...motor, switchSlipRatio: nearNought, recloseSlipRatio: nearNought };
  const open = { ...motor, switchSlipRatio: 1 - nearNought, recloseSlipRatio: 1 };
  const hasSwitch = motor.kind !== 'permanent-capacitor';
  singlePhaseMotorState(motor, { voltageV: 1, slipRatio: 1 });
  return {
    phases: 1,
    polePairs: circuit.polePairs,
    frictionNmS: circuit.rotationalLossW / ((circuit.rotationalLossSpeedRpm * Math.PI) / 30) ** 2,
    ...(hasSwitch ? { speedSwitch: { opensAtRatio: 1 - switchSlipRatio, closesAtRatio: 1 - closes } } : {}),
    answer: (slipRatio, frequencyHz, isSwitchOpen, into) => {
      if (Math.abs(frequencyHz - circuit.frequencyHz) > 1e-9) {
        throw new RangeError(
          `frequencyHz: expected ${circuit.frequencyHz} of the circuit, found ${frequencyHz}`,
        );
      }
      const point = { voltageV: 1, slipRatio: Math.min(1, slipRatio), wasSwitchOpen: isSwitchOpen };
      const state = singlePhaseMotorState(isSwitchOpen ? open : closed, point);
      into.conductanceS = state.lineCurrent.re;
      into.susceptanceS = state.lineCurrent.im;
      into.torqueNmPerV2 = state.torqueNm;
      into.rotorLossWPerV2 = state.rotorLossW;
    },
  };
};
