import type { HeatState, InverterModel } from '../../inverter/model.ts';
import type { ZipLoad } from '../../inverter/voltage/zip-load.ts';
import type { ShaftLoad } from '../shaft-loads/shaft-load.ts';
import type { Starter } from '../starters/starter.ts';
import type { RunUpMachine } from './run-up-machine.ts';

/** The output of one phase; a three-phase motor has three alike. */
export interface RunUpSource {
  /** across one phase of the motor, counted as star [V] */
  readonly nominalV: number;
  readonly frequencyHz: number;
  /** the most r.m.s. current it gives [A]; Infinity for a supply without limit */
  readonly limitA: number;
  /** what else runs on the phase, stated at nominal voltage [W, var] */
  readonly others: ZipLoad;
  /** heat and cycle counter; absent for a source that never stops */
  readonly protection?: RunUpProtection;
}

export interface RunUpProtection {
  readonly model: InverterModel;
  /** heat at which it stops, in its surroundings */
  readonly allowedHeatRatio: number;
  /** heat before the start */
  readonly heat: HeatState;
}

export interface RunUpSetup {
  readonly machine: RunUpMachine;
  readonly motorInertiaKgM2: number;
  /** it holds still against less than its torque at standstill */
  readonly load: ShaftLoad;
  readonly source: RunUpSource;
  /** default: direct */
  readonly starter?: Starter;
  /** the run ends here at the latest [s], default 60 */
  readonly untilS?: number;
  /** spacing of the samples [s]; absent: no samples */
  readonly sampleEveryS?: number;
  /** local error of the speed allowed in a step, as a share of synchronous speed; default 1e-7 */
  readonly toleranceRatio?: number;
}

export type RunUpOutcome = 'started' | 'stalled' | 'tripped-by-cycle-counter' | 'tripped-by-heat';

/** Why the run came out as it did. */
export type RunUpReason =
  | { readonly kind: 'at-speed' }
  /** the motor settled below its running speed, or never moved */
  | {
      readonly kind: 'torque-too-small';
      readonly motorTorqueNm: number;
      readonly loadTorqueNm: number;
      readonly neverMoved: boolean;
    }
  /** still speeding up when the time was over, or waiting for a stage that did not come */
  | { readonly kind: 'out-of-time'; readonly untilS: number }
  | { readonly kind: 'voltage-not-held'; readonly cycles: number; readonly voltageRatio: number }
  | { readonly kind: 'too-hot'; readonly allowedHeatRatio: number };

/** Evenly spaced in time from 0 on. */
export interface RunUpSamples {
  readonly everyS: number;
  readonly speedRadPerS: Float64Array;
  readonly voltageV: Float64Array;
  readonly motorA: Float64Array;
  /** of the source, with everything else that runs */
  readonly outputA: Float64Array;
  readonly motorTorqueNm: Float64Array;
  /** of both nodes together; nought without protection */
  readonly heatRatio: Float64Array;
}

export interface RunUp {
  readonly outcome: RunUpOutcome;
  readonly reason: RunUpReason;
  /** until 98 % of the running speed, in the last stage, with the voltage held [s]; null when it never got there */
  readonly runUpTimeS: number | null;
  /** where the calculation ended: settled, tripped or out of time [s] */
  readonly endS: number;
  readonly endSpeedRadPerS: number;
  /** the speed at which the motor would run in its last stage beside everything else; null when it has none */
  readonly runningSpeedRadPerS: number | null;
  readonly minimumVoltageRatio: number;
  readonly minimumVoltageV: number;
  /** highest r.m.s. values at the motor and at the source [A] */
  readonly peakMotorA: number;
  readonly peakOutputA: number;
  /** when the current limit let go for good, so that the voltage was full again [s]; null when it never acted or never let go */
  readonly limitEndsS: number | null;
  /** longest time without held voltage, in seconds and in cycles */
  readonly voltageLostS: number;
  readonly voltageLostCycles: number;
  /** ∫I²dt at the motor and at the source, until the end [A²s] */
  readonly motorSquareA2S: number;
  readonly outputSquareA2S: number;
  /** heat set free in the rotor [J] */
  readonly rotorLossJ: number;
  /** of the inverter at the end; null without protection */
  readonly heatEnd: HeatState | null;
  readonly peakHeatRatio: number | null;
  readonly allowedHeatRatio: number | null;
  /** when the heat would stop the inverter if the end went on as it is [s from the start]; null: never */
  readonly heatStopS: number | null;
  /** evaluations of the motor's rate of change, a measure of the work */
  readonly evaluations: number;
  readonly samples: RunUpSamples | null;
}
