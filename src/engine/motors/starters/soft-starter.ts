import { checkedNumber } from '../../ac/checked-number.ts';
import { harmonicsOfCut } from './harmonics-of-cut.ts';
import { runningStage, type Starter } from './starter.ts';

/**
 * A phase-cutting soft starter: the fundamental of the motor's voltage rises evenly from a first value to the full
 * one, then the thyristors are bridged.
 *
 * Torque goes with the square of the voltage, current only with its first power: half the current is a quarter of the
 * torque, and the run-up takes four times as long or more. The starter transforms nothing: the supply carries the
 * motor's current, at a worse power factor (the power is that of the reduced voltage), and its harmonics.
 *
 * @param given.startVoltageRatio  fundamental of the first voltage by the full one, above 0 up to 1
 * @param given.rampS              from the first to the full voltage [s], > 0
 * @returns the starter
 * @throws  {RangeError} a voltage or ramp outside its limits
 * Valid for: harmonics as of one phase on a load with the motor's power factor at that slip (`phaseCutWave`): with three
 *            wires and a turning rotor an approximation; torque of the harmonics neglected
 * Formula: I = u·Y·V, T = u²·T_full, cos φ_line = u·cos φ
 * Source:  derived; common-practice (voltage ramp)
 * Example: softStarter({ startVoltageRatio: 0.4, rampS: 5 }).stages.length → 2
 */
export const softStarter = (given: { startVoltageRatio: number; rampS: number }): Starter => {
  const first = checkedNumber('startVoltageRatio', given.startVoltageRatio, { above: 0, max: 1 });
  const rampS = checkedNumber('rampS', given.rampS, { above: 0 });
  return {
    kind: 'soft',
    stages: [
      {
        isSteady: false,
        end: { afterS: rampS },
        connect: ({ conductanceS: g, susceptanceS: b }, inStageS, into) => {
          const u = first + ((1 - first) * inStageS) / rampS;
          const current = u * Math.sqrt(g * g + b * b);
          const real = u * u * g;
          const harmonic = current * harmonicsOfCut(u, (Math.atan2(-b, g) * 180) / Math.PI);
          into.conductanceS = real;
          into.susceptanceS = -Math.sqrt(Math.max(0, current * current - real * real));
          into.harmonicS = harmonic;
          into.motorS = Math.sqrt(current * current + harmonic * harmonic);
          into.torqueRatio = u * u;
        },
      },
      runningStage,
    ],
  };
};
