import { bracketedRoot } from '../../inverter/bracketed-root.ts';
import type { Starter, StarterStage } from '../starters/starter.ts';
import { dormandPrince, stepFactor } from './dormand-prince.ts';
import { FAST_HEAT, type Plant, SLOW_HEAT, SPEED, STATE_SIZE } from './plant.ts';
import { findEvent, type RunUpEvent } from './run-up-events.ts';
import type { RunUpOutcome, RunUpReason, RunUpSamples, RunUpSetup } from './run-up-types.ts';
import { makeSampler } from './sampler.ts';

/** Started at this share of the running speed. */
const startedRatio = 0.98;
/** Settled: this near to the running speed, or speeding up by less than this share of synchronous speed a second. */
const settledNearRatio = 1e-6;
const settledRatePerS = 1e-4;
/** Where something changes with time alone, the error of the speed cannot see it. */
const longestRampStepS = 0.1;
const heatTolerance = 1e-7;
/** No shorter steps, so that a load whose torque jumps with speed costs no eternity; and no honest run takes so many. */
const shortestStepS = 1e-5;
const mostSteps = 200_000;
const never = Number.POSITIVE_INFINITY;

const jumps = 'load.torqueNm: expected a torque that changes smoothly with speed, found one that jumps';

export interface Integration {
  outcome: RunUpOutcome;
  reason: RunUpReason;
  timeS: number;
  startedS: number | null;
  minimumVoltageRatio: number;
  peakMotorA: number;
  peakOutputA: number;
  limitEndsS: number | null;
  longestLostS: number;
  peakHeatRatio: number;
  readonly state: Float64Array;
  samples: RunUpSamples | null;
}

/** Steps through the run: one smooth stretch after the other, each ending just on the event that changes it. */
export const integrateRunUp = (given: {
  setup: RunUpSetup;
  starter: Starter;
  plant: Plant;
  runningSpeedRadPerS: number | null;
}): Integration => {
  const { setup, starter, plant } = given;
  const { protection, nominalV, frequencyHz } = setup.source;
  const untilS = setup.untilS ?? 60;
  const tolerance = (setup.toleranceRatio ?? 1e-7) * plant.fieldRadPerS;
  const counterS = protection ? protection.model.datasheet.voltageLostCycles / frequencyHz : never;
  const heldRatio = protection?.model.datasheet.voltageHeldRatio ?? 0;
  const runningSpeed = given.runningSpeedRadPerS ?? never;
  const stepper = dormandPrince(STATE_SIZE, plant.rates);
  const { state, next, error } = stepper;
  if (protection) {
    state[FAST_HEAT] = protection.heat.fast;
    state[SLOW_HEAT] = protection.heat.slow;
  }
  const hasHeat = protection !== undefined;
  const sampler =
    setup.sampleEveryS === undefined
      ? null
      : makeSampler({ everyS: setup.sampleEveryS, untilS, plant, stepper, nominalV, hasHeat });
  const run: Integration = {
    outcome: 'stalled',
    reason: { kind: 'out-of-time', untilS },
    timeS: 0,
    startedS: null,
    minimumVoltageRatio: 1,
    peakMotorA: 0,
    peakOutputA: 0,
    limitEndsS: null,
    longestLostS: 0,
    peakHeatRatio: hasHeat ? (state[FAST_HEAT] as number) + (state[SLOW_HEAT] as number) : 0,
    state,
    samples: null,
  };
  let isLost = false;
  let lostSinceS = 0;

  const stageNow = (): StarterStage => starter.stages[plant.stage] as StarterStage;
  const speedNow = (): number => state[SPEED] as number;
  const isLast = (): boolean => plant.stage === starter.stages.length - 1;
  const loseVoltage = (lost: boolean): void => {
    if (lost && !isLost) lostSinceS = run.timeS;
    if (!lost && isLost) run.longestLostS = Math.max(run.longestLostS, run.timeS - lostSinceS);
    isLost = lost;
  };
  const note = (): void => {
    run.minimumVoltageRatio = Math.min(run.minimumVoltageRatio, plant.voltageRatio);
    run.peakMotorA = Math.max(run.peakMotorA, plant.motorA);
    run.peakOutputA = Math.max(run.peakOutputA, plant.outputA);
    run.peakHeatRatio = Math.max(
      run.peakHeatRatio,
      (state[FAST_HEAT] as number) + (state[SLOW_HEAT] as number),
    );
  };
  /** Sorts out from nothing which of the equations hold: at the start and after a stage. */
  const sortOut = (): void => {
    const wasLimited = plant.isLimited;
    plant.isLimited = false;
    plant.evaluate(run.timeS, speedNow());
    if (plant.demandRatio > 1) {
      plant.isLimited = true;
      plant.evaluate(run.timeS, speedNow());
    }
    if (wasLimited && !plant.isLimited) run.limitEndsS = run.timeS;
    if (plant.isLimited) run.limitEndsS = null;
    if (speedNow() === 0) plant.isStanding = !(plant.airGapTorqueNm > plant.brakeTorqueNm);
    loseVoltage(hasHeat && plant.voltageRatio < heldRatio);
    note();
  };
  const nextStage = (): void => {
    plant.stage += 1;
    plant.stageStartS = run.timeS;
    sortOut();
  };
  const apply = (event: RunUpEvent): void => {
    switch (event) {
      case 'limit':
        plant.isLimited = !plant.isLimited;
        run.limitEndsS = plant.isLimited ? null : run.timeS;
        return;
      case 'held':
        loseVoltage(!isLost);
        return;
      case 'stage':
        nextStage();
        return;
      case 'speed-switch':
        plant.isSwitchOpen = !plant.isSwitchOpen;
        sortOut();
        return;
      case 'standing':
        if (!plant.isStanding) state[SPEED] = 0;
        plant.isStanding = !plant.isStanding;
        return;
      case 'heat':
        run.outcome = 'tripped-by-heat';
        run.reason = { kind: 'too-hot', allowedHeatRatio: protection?.allowedHeatRatio ?? 0 };
    }
  };
  /** Notes the moment at which the motor counts as started, in the step tried last. */
  const lookForStart = (stepS: number): void => {
    const goal = startedRatio * runningSpeed;
    if (run.startedS !== null || isLost || !isLast() || (next[SPEED] as number) < goal) return;
    stepper.prepare(SPEED, stepS);
    const valueAt = (share: number): number => stepper.between(share) - goal;
    const share = speedNow() >= goal ? 0 : bracketedRoot({ lower: 0, upper: 1, valueAt });
    run.startedS = run.timeS + share * stepS;
  };
  const hasSettled = (rate: number): boolean => {
    if (isLost || !stageNow().isSteady || stageNow().end?.afterS !== undefined) return false;
    const isNear = isLast() && Math.abs(speedNow() - runningSpeed) < settledNearRatio * plant.fieldRadPerS;
    return isNear || Math.abs(rate) < settledRatePerS * plant.fieldRadPerS;
  };

  plant.stage = 0;
  plant.stageStartS = 0;
  plant.isLimited = false;
  plant.isSwitchOpen = false;
  plant.isStanding = true;
  sortOut();
  sampler?.begin();
  stepper.begin(0);
  let stepS = 1e-3;
  let stuck = 0;
  let steps = 0;
  const isTripped = (): boolean => run.outcome === 'tripped-by-heat';
  while (run.timeS < untilS) {
    if (hasSettled(stepper.startRate[SPEED] as number)) {
      plant.evaluate(run.timeS, speedNow());
      const { airGapTorqueNm: motorTorqueNm, brakeTorqueNm: loadTorqueNm } = plant;
      run.reason = { kind: 'torque-too-small', motorTorqueNm, loadTorqueNm, neverMoved: speedNow() === 0 };
      break;
    }
    const stage = stageNow();
    const stageEndS = stage.end?.afterS === undefined ? never : plant.stageStartS + stage.end.afterS;
    const tripAtS = isLost ? lostSinceS + counterS : never;
    const stopS = Math.min(untilS, stageEndS, tripAtS);
    const isToStop = stepS >= stopS - run.timeS;
    let triedS = isToStop ? stopS - run.timeS : stepS;
    if (!stage.isSteady && triedS > longestRampStepS) triedS = longestRampStepS;
    let found = null;
    if (triedS > 0) {
      stepper.attempt(run.timeS, triedS);
      const heatError = Math.abs(error[FAST_HEAT] as number) + Math.abs(error[SLOW_HEAT] as number);
      const errorRatio = Math.max(Math.abs(error[SPEED] as number) / tolerance, heatError / heatTolerance);
      stepS = Math.max(shortestStepS, triedS * stepFactor(errorRatio));
      if (errorRatio > 1 && triedS > shortestStepS) continue;
      steps += 1;
      if (steps > mostSteps) throw new RangeError(jumps);
      const { timeS } = run;
      found = findEvent({ plant, stepper, setup, isLost, end: stage.end, timeS, stepS: triedS });
      if (found) {
        triedS = found.stepS;
        stuck = triedS > 0 ? 0 : stuck + 1;
        if (triedS > 0) stepper.attempt(timeS, triedS);
        if (stuck > 8) throw new RangeError(`runUp: the equations change without end at ${timeS} s`);
      }
      if (triedS > 0) {
        lookForStart(triedS);
        sampler?.take(timeS, triedS);
        if (sampler) plant.evaluate(timeS + triedS, next[SPEED] as number);
        stepper.accept();
        run.timeS = isToStop && !found && triedS === stopS - timeS ? stopS : timeS + triedS;
        note();
      }
    }
    if (found) apply(found.event);
    else if (run.timeS === stageEndS) nextStage();
    else if (run.timeS === tripAtS) {
      run.outcome = 'tripped-by-cycle-counter';
      const { voltageRatio } = plant;
      run.reason = { kind: 'voltage-not-held', cycles: counterS * frequencyHz, voltageRatio };
      break;
    } else continue;
    if (isTripped()) break;
    stepper.begin(run.timeS);
    stepS = Math.min(stepS, 5e-3);
  }
  loseVoltage(false);
  if (run.startedS !== null && run.outcome === 'stalled') {
    run.outcome = 'started';
    run.reason = { kind: 'at-speed' };
  }
  plant.evaluate(run.timeS, speedNow());
  run.samples = sampler?.finish() ?? null;
  return run;
};
