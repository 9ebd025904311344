import { bracketedRoot } from '../../inverter/bracketed-root.ts';
import { emptyAnswer, fieldRadPerS, type RunUpMachine } from '../run-up/run-up-machine.ts';

/** The motor's own rating for the ratio of voltage to frequency. */
export interface ConverterDrive {
  readonly machine: RunUpMachine;
  /** across one phase, counted as star, at the nominal frequency [V] */
  readonly motorPhaseV: number;
  readonly nominalHz: number;
  /** voltage at standstill by nominal voltage: what the stator's resistance takes (0–1) */
  readonly boostRatio: number;
}

/** What the converter must give for a torque at a speed. */
export interface ConverterPoint {
  readonly frequencyHz: number;
  readonly currentA: number;
  readonly powerW: number;
}

/**
 * Frequency, current and power at which the motor gives a torque at a speed, with the voltage in proportion to the
 * frequency and a boost at standstill. Null when it cannot.
 */
export const converterPoint = (
  drive: ConverterDrive,
  speedRadPerS: number,
  torqueNm: number,
): ConverterPoint | null => {
  const { machine, nominalHz, boostRatio } = drive;
  const answer = emptyAnswer();
  const turnHz = speedRadPerS / fieldRadPerS(machine.polePairs, 1);
  const voltageAt = (frequencyHz: number): number =>
    drive.motorPhaseV * Math.min(1, boostRatio + ((1 - boostRatio) * frequencyHz) / nominalHz);
  const surplus = (slipHz: number): number => {
    const frequencyHz = turnHz + slipHz;
    machine.answer(slipHz / frequencyHz, frequencyHz, true, answer);
    return answer.torqueNmPerV2 * voltageAt(frequencyHz) ** 2 - torqueNm;
  };
  const least = nominalHz * 1e-6;
  let before = least;
  if (surplus(least) < 0) {
    for (let slipHz = nominalHz * 1e-4; surplus(slipHz) < 0; slipHz *= 1.1) {
      if (slipHz > nominalHz / 2) return null;
      before = slipHz;
    }
    before = bracketedRoot({
      lower: before,
      upper: Math.max(before * 1.1, nominalHz * 1e-4),
      valueAt: surplus,
    });
    surplus(before);
  }
  const frequencyHz = turnHz + before;
  const voltageV = voltageAt(frequencyHz);
  return {
    frequencyHz,
    currentA: voltageV * Math.hypot(answer.conductanceS, answer.susceptanceS),
    powerW: machine.phases * voltageV * voltageV * answer.conductanceS,
  };
};
