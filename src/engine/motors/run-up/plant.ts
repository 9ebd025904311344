import { lossesW } from '../../inverter/losses.ts';
import { emptyTerms, type Starter, type StarterStage } from '../starters/starter.ts';
import { limitedOutput } from './limited-output.ts';
import { emptyAnswer, fieldRadPerS } from './run-up-machine.ts';
import type { RunUpSetup } from './run-up-types.ts';

/** Components of the state that is integrated. */
export const SPEED = 0;
export const MOTOR_SQUARE = 1;
export const OUTPUT_SQUARE = 2;
export const ROTOR_LOSS = 3;
export const FAST_HEAT = 4;
export const SLOW_HEAT = 5;
export const STATE_SIZE = 6;

/** Motor, starter, source and load at one instant. The run sets the discrete part; `evaluate` fills in the rest. */
export interface Plant {
  readonly fieldRadPerS: number;
  readonly inertiaKgM2: number;
  /** set by the run, constant within a step */
  stage: number;
  stageStartS: number;
  isLimited: boolean;
  isSwitchOpen: boolean;
  isStanding: boolean;
  /** found by `evaluate` */
  demandRatio: number;
  voltageRatio: number;
  motorA: number;
  outputA: number;
  airGapTorqueNm: number;
  /** load and friction together */
  brakeTorqueNm: number;
  rotorLossW: number;
  evaluations: number;
  readonly evaluate: (timeS: number, speedRadPerS: number) => void;
  readonly rates: (timeS: number, state: Float64Array, rate: Float64Array) => void;
}

const lookup = (stages: readonly StarterStage[], index: number): StarterStage =>
  stages[index] as StarterStage;

/**
 * Builds the right-hand side of J·dω/dt = T_motor − T_load. The motor at a slip is an impedance and joins the
 * constant-impedance share of the other loads; while the limit acts, the voltage follows from all of them together.
 */
export const makePlant = (setup: RunUpSetup, starter: Starter): Plant => {
  const { machine, load, source } = setup;
  const { nominalV, frequencyHz, limitA, protection } = source;
  const isStiff = limitA === Number.POSITIVE_INFINITY;
  const baseA = isStiff ? 1 : limitA;
  const output = limitedOutput(source.others, nominalV * baseA);
  const field = fieldRadPerS(machine.polePairs, frequencyHz);
  const answer = emptyAnswer();
  const terms = emptyTerms();
  const losses = protection?.model.losses;
  const heatPerW = protection ? 1 / protection.model.continuousLossW : 0;
  const network = protection?.model.network;
  const fastShare = network?.fastShareRatio ?? 0;
  const fastRate = network ? 1 / network.fastTimeConstantS : 0;
  const slowRate = network ? 1 / network.slowTimeConstantS : 0;
  const voltAmps = nominalV / baseA;

  const plant: Plant = {
    fieldRadPerS: field,
    inertiaKgM2: setup.motorInertiaKgM2 + load.inertiaKgM2,
    stage: 0,
    stageStartS: 0,
    isLimited: false,
    isSwitchOpen: false,
    isStanding: true,
    demandRatio: 0,
    voltageRatio: 1,
    motorA: 0,
    outputA: 0,
    airGapTorqueNm: 0,
    brakeTorqueNm: 0,
    rotorLossW: 0,
    evaluations: 0,
    evaluate: (timeS, speedRadPerS) => {
      plant.evaluations += 1;
      machine.answer(1 - speedRadPerS / field, frequencyHz, plant.isSwitchOpen, answer);
      lookup(starter.stages, plant.stage).connect(answer, timeS - plant.stageStartS, terms);
      const re = terms.conductanceS * voltAmps;
      const im = -terms.susceptanceS * voltAmps;
      const harmonic = terms.harmonicS * voltAmps;
      const demand = output.demandRatio(re, im, harmonic);
      plant.demandRatio = isStiff ? 0 : demand;
      const ratio = plant.isLimited ? output.ratioAtLimit(re, im, harmonic) : 1;
      plant.voltageRatio = ratio;
      plant.outputA = plant.isLimited ? limitA : demand * baseA;
      const volts = ratio * nominalV;
      const square = volts * volts * terms.torqueRatio;
      plant.motorA = terms.motorS * volts;
      plant.airGapTorqueNm = answer.torqueNmPerV2 * square;
      plant.rotorLossW = answer.rotorLossWPerV2 * square;
      plant.brakeTorqueNm = load.torqueNm(speedRadPerS) + machine.frictionNmS * speedRadPerS;
    },
    rates: (timeS, state, rate) => {
      const speed = state[SPEED] as number;
      plant.evaluate(timeS, speed);
      rate[SPEED] = plant.isStanding ? 0 : (plant.airGapTorqueNm - plant.brakeTorqueNm) / plant.inertiaKgM2;
      rate[MOTOR_SQUARE] = plant.motorA * plant.motorA;
      rate[OUTPUT_SQUARE] = plant.outputA * plant.outputA;
      rate[ROTOR_LOSS] = plant.rotorLossW;
      const target = losses ? lossesW(losses, plant.outputA) * heatPerW : 0;
      rate[FAST_HEAT] = (fastShare * target - (state[FAST_HEAT] as number)) * fastRate;
      rate[SLOW_HEAT] = ((1 - fastShare) * target - (state[SLOW_HEAT] as number)) * slowRate;
    },
  };
  return plant;
};
