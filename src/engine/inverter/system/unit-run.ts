import { allowedHeat } from '../allowed-heat.ts';
import { settledHeat } from '../heat-target.ts';
import type { InverterModel } from '../model.ts';
import { timeToFall, timeToRise } from '../thermal/time-to-rise.ts';
import { voltageUnderLimit } from '../voltage/voltage-under-limit.ts';
import { noLoad, zipPowerW } from '../voltage/zip-load.ts';
import type { SystemUnit, TimedLoad } from './system-types.ts';

/** A warning goes off when the heat has fallen to this share of the level at which it came on. */
export const warningOffRatio = 0.95;

/** A unit on its way through the run: the mutable part of `simulateSystem`, kept in one place. */
export interface UnitRun {
  readonly id: string;
  readonly phase: string;
  readonly model: InverterModel;
  readonly loads: readonly TimedLoad[];
  readonly allowed: number;
  readonly warningLevel: number;
  readonly lostForS: number;
  fast: number;
  slow: number;
  /** index of the next load to come */
  next: number;
  /** solution for the load now connected */
  demandA: number;
  currentA: number;
  voltageRatio: number;
  outputW: number;
  runningTarget: number;
  warning: boolean;
  /** clock time at which lost voltage stops the unit [s]; Infinity while the voltage is held */
  lostAtS: number;
  peak: number;
  peakAtS: number;
}

const checkLoads = ({ id, loads }: SystemUnit): void => {
  let last = Number.NEGATIVE_INFINITY;
  for (const { startS } of loads) {
    if (!(startS >= last)) {
      throw new RangeError(`units.${id}.loads: expected startS in order, found ${startS} s after ${last} s`);
    }
    last = startS;
  }
};

/** Sets the unit up at time 0, with the load then connected. */
export const startUnitRun = (unit: SystemUnit): UnitRun => {
  checkLoads(unit);
  const { model, loads } = unit;
  const heat = unit.heat ?? settledHeat(model, 0);
  const allowed = allowedHeat(unit);
  const run: UnitRun = {
    id: unit.id,
    phase: unit.phase,
    model,
    loads,
    allowed,
    warningLevel: allowed * model.datasheet.warnAtHeatRatio,
    lostForS: model.datasheet.voltageLostCycles / model.datasheet.frequencyHz,
    fast: heat.fast,
    slow: heat.slow,
    next: 0,
    demandA: 0,
    currentA: 0,
    voltageRatio: 1,
    outputW: 0,
    runningTarget: 0,
    warning: false,
    lostAtS: Number.POSITIVE_INFINITY,
    peak: heat.fast + heat.slow,
    peakAtS: 0,
  };
  solveLoad(run, noLoad);
  takeLoadsUntil(run, 0);
  return run;
};

const solveLoad = (run: UnitRun, load: TimedLoad['load']): void => {
  const { datasheet, limitA, losses, continuousLossW } = run.model;
  const solved = voltageUnderLimit({ load, nominalV: datasheet.acNominalV, limitA });
  run.demandA = solved.demandA;
  run.currentA = solved.currentA;
  run.voltageRatio = solved.voltageRatio;
  run.outputW = solved.collapsed ? 0 : zipPowerW(load, solved.voltageRatio);
  const { currentA } = solved;
  run.runningTarget =
    (losses.constantW + currentA * (losses.linearWPerA + currentA * losses.squareWPerA2)) / continuousLossW;
};

/** Connects what has come due; of several loads at one time the last counts. Tells whether anything changed. */
export const takeLoadsUntil = (run: UnitRun, timeS: number): boolean => {
  const before = run.next;
  let coming = run.loads[run.next];
  while (coming !== undefined && coming.startS <= timeS) coming = run.loads[++run.next];
  const due = run.next > before ? run.loads[run.next - 1] : undefined;
  if (due === undefined) return false;
  solveLoad(run, due.load);
  return true;
};

export const nextLoadS = (run: UnitRun): number => run.loads[run.next]?.startS ?? Number.POSITIVE_INFINITY;

/** The next threshold the heat crosses within a time while running. */
export interface Crossing {
  readonly inS: number;
  readonly kind: 'stop' | 'warning-on' | 'warning-off';
}

/**
 * Finds the first crossing of stop or warning level within a time. The cheap bounds come first: in most stretches
 * nothing crosses and no root is sought.
 */
export const firstCrossing = (run: UnitRun, durationS: number): Crossing | null => {
  const { fastShareRatio, fastTimeConstantS, slowTimeConstantS } = run.model.network;
  const steady = run.runningTarget;
  const fastPart = run.fast - fastShareRatio * steady;
  const slowPart = run.slow - (1 - fastShareRatio) * steady;
  const level = run.warning ? run.allowed : run.warningLevel;
  const offLevel = run.warning ? run.warningLevel * warningOffRatio : Number.NEGATIVE_INFINITY;
  const highest = steady + Math.max(0, slowPart) + Math.max(0, fastPart);
  const lowest = steady + Math.min(0, slowPart) + Math.min(0, fastPart);
  if (highest < level && lowest > offLevel) return null;
  const curve = { steady, fastPart, slowPart, fastTimeConstantS, slowTimeConstantS };
  const riseS = highest >= level ? timeToRise({ curve, level }) : null;
  const fallS = lowest <= offLevel ? timeToFall({ curve, level: offLevel }) : null;
  const rises = riseS !== null && riseS <= durationS && (fallS === null || riseS <= fallS);
  if (rises) return { inS: riseS, kind: run.warning ? 'stop' : 'warning-on' };
  return fallS !== null && fallS <= durationS ? { inS: fallS, kind: 'warning-off' } : null;
};

/** Moves the unit's heat on and keeps the peak. */
export const advanceHeat = (run: UnitRun, running: boolean, startS: number, durationS: number): void => {
  const { fastShareRatio, fastTimeConstantS, slowTimeConstantS } = run.model.network;
  const target = running ? run.runningTarget : 0;
  const fastTarget = fastShareRatio * target;
  const slowTarget = target - fastTarget;
  const fastPart = run.fast - fastTarget;
  const slowPart = run.slow - slowTarget;
  const fastLeft = fastPart * Math.exp(-durationS / fastTimeConstantS);
  const slowLeft = slowPart * Math.exp(-durationS / slowTimeConstantS);
  run.fast = fastTarget + fastLeft;
  run.slow = slowTarget + slowLeft;
  let top = run.fast + run.slow;
  let topAtS = durationS;
  const fastWeight = slowTimeConstantS / fastTimeConstantS;
  if (
    target + slowPart > run.peak &&
    fastPart < 0 &&
    slowPart > 0 &&
    fastPart * fastWeight + slowPart < 0 &&
    fastLeft * fastWeight + slowLeft > 0
  ) {
    topAtS = Math.log((-fastPart * fastWeight) / slowPart) / (1 / fastTimeConstantS - 1 / slowTimeConstantS);
    top = target + slowPart * Math.exp(-topAtS / slowTimeConstantS) * (1 - 1 / fastWeight);
  }
  if (top > run.peak) {
    run.peak = top;
    run.peakAtS = startS + topAtS;
  }
};
