import {
  afterRestart,
  afterStop,
  freshlyOn,
  type Protection,
  type ProtectionSettings,
  protectionSettings,
} from './protection.ts';
import type { Segment, StopCause, SystemEvent, SystemRun, SystemState, Timeline } from './system-types.ts';
import {
  advanceHeat,
  firstCrossing,
  nextLoadS,
  startUnitRun,
  takeLoadsUntil,
  type UnitRun,
} from './unit-run.ts';

/** No honest run comes near these: the last defence against a loop that never ends. */
const mostSteps = { besideLoads: 100_000, perLoad: 10 };

const never = Number.POSITIVE_INFINITY;

/** Everything the run changes as it goes. */
interface Progress {
  readonly units: readonly UnitRun[];
  readonly settings: ProtectionSettings;
  readonly resetsS: readonly number[];
  nextReset: number;
  protection: Protection;
  timeS: number;
  readonly segments: Segment[];
  readonly events: SystemEvent[];
}

const stateOf = ({ protection, units }: Progress): SystemState => {
  if (protection.kind !== 'on') return protection.kind;
  for (const unit of units) if (unit.warning) return 'warning';
  return 'running';
};

const note = (
  run: Progress,
  kind: SystemEvent['kind'],
  unit?: UnitRun,
  more?: { cause?: StopCause; count?: number },
): void => {
  const timeS = run.timeS;
  run.events.push(
    unit ? { timeS, kind, unitId: unit.id, phase: unit.phase, ...more } : { timeS, kind, ...more },
  );
};

/** Lets time pass up to a moment at which something may change. */
const passUntil = (run: Progress, timeS: number): void => {
  const durationS = timeS - run.timeS;
  if (!(durationS > 0)) return;
  const running = run.protection.kind === 'on';
  run.segments.push({
    startS: run.timeS,
    endS: timeS,
    state: stateOf(run),
    units: run.units.map((unit) => ({
      id: unit.id,
      demandA: unit.demandA,
      currentA: running ? unit.currentA : 0,
      voltageRatio: running ? unit.voltageRatio : 0,
      outputW: running ? unit.outputW : 0,
      heatStart: { fast: unit.fast, slow: unit.slow },
      currentForHeatA: running ? unit.currentA : null,
    })),
  });
  for (const unit of run.units) advanceHeat(unit, running, run.timeS, durationS);
  run.timeS = timeS;
};

const stopAll = (run: Progress, tripping: UnitRun, cause: StopCause): void => {
  run.protection = afterStop(run.settings, run.protection, run.timeS);
  const { count } = run.protection;
  note(run, 'stop', tripping, { cause, count });
  if (run.protection.kind === 'locked-out') note(run, 'lockout', tripping, { count });
  for (const unit of run.units) {
    unit.warning = false;
    unit.lostAtS = never;
  }
};

/** Starts or ends a unit's count of mains cycles without held voltage, as its present load demands. */
const watchVoltage = (run: Progress, unit: UnitRun): void => {
  const held = unit.voltageRatio >= unit.model.datasheet.voltageHeldRatio;
  if (held && unit.lostAtS < never) {
    unit.lostAtS = never;
    note(run, 'voltage-recovers', unit);
  } else if (!held && unit.lostAtS === never) {
    unit.lostAtS = run.timeS + unit.lostForS;
    note(run, 'voltage-lost-begins', unit);
  }
};

/** All units come on; one that is too hot stops the system at once. */
const switchOn = (run: Progress, protection: Protection): void => {
  run.protection = protection;
  for (const unit of run.units) {
    if (unit.fast + unit.slow > unit.allowed * (1 + 1e-12)) {
      stopAll(run, unit, 'heat');
      return;
    }
  }
  for (const unit of run.units) {
    if (unit.fast + unit.slow >= unit.warningLevel) {
      unit.warning = true;
      note(run, 'warning-on', unit);
    }
    watchVoltage(run, unit);
  }
};

/** The next moment fixed beforehand: nothing but heat can change sooner. */
const nextFixedS = (run: Progress, untilS: number): number => {
  let timeS = Math.min(untilS, run.resetsS[run.nextReset] ?? never);
  const { protection } = run;
  if (protection.kind === 'stopped') timeS = Math.min(timeS, protection.restartAtS);
  if (protection.kind === 'on') timeS = Math.min(timeS, protection.clearAtS);
  for (const unit of run.units) timeS = Math.min(timeS, nextLoadS(unit), unit.lostAtS);
  return timeS;
};

/** Runs up to the first heat crossing before a moment, and deals with it. Tells whether there was one. */
const passCrossing = (run: Progress, untilS: number): boolean => {
  let first: { unit: UnitRun; inS: number; kind: 'stop' | 'warning-on' | 'warning-off' } | null = null;
  for (const unit of run.units) {
    const crossing = firstCrossing(unit, first?.inS ?? untilS - run.timeS);
    if (crossing && (first === null || crossing.inS < first.inS)) first = { unit, ...crossing };
  }
  if (first === null) return false;
  passUntil(run, run.timeS + first.inS);
  if (first.kind === 'stop') {
    stopAll(run, first.unit, 'heat');
  } else {
    first.unit.warning = first.kind === 'warning-on';
    note(run, first.kind, first.unit);
  }
  return true;
};

/** Everything due at this moment, in the order that the doc block of `simulateSystem` promises. */
const takeFixed = (run: Progress): void => {
  for (const unit of run.units) {
    if (!takeLoadsUntil(unit, run.timeS)) continue;
    note(run, 'load-change', unit);
    if (run.protection.kind === 'on') watchVoltage(run, unit);
  }
  if (run.protection.kind === 'on' && run.protection.clearAtS <= run.timeS) {
    run.protection = freshlyOn;
    note(run, 'count-cleared');
  }
  for (const unit of run.units) {
    if (unit.lostAtS <= run.timeS) stopAll(run, unit, 'voltage-lost');
  }
  if (run.protection.kind === 'stopped' && run.protection.restartAtS <= run.timeS) {
    note(run, 'restart');
    switchOn(run, afterRestart(run.settings, run.protection, run.timeS));
  }
  while ((run.resetsS[run.nextReset] ?? never) <= run.timeS) {
    run.nextReset++;
    note(run, 'manual-reset');
    if (run.protection.kind === 'on') run.protection = freshlyOn;
    else switchOn(run, freshlyOn);
  }
};

const checkRun = ({ untilS, manualResetsS = [] }: SystemRun): void => {
  if (!(untilS >= 0 && untilS < never)) {
    throw new RangeError(`untilS: expected 0 s or more, finite, found ${untilS} s`);
  }
  let last = 0;
  for (const timeS of manualResetsS) {
    if (!(timeS >= last)) {
      throw new RangeError(
        `manualResetsS: expected times from 0 s in order, found ${timeS} s after ${last} s`,
      );
    }
    last = timeS;
  }
};

/**
 * Runs one unit, or several that stop together, through their loads: heat, current limit, and the sequence of
 * warning, stop, fixed wait, restart, counting and lockout. Event by event, in closed form between events.
 *
 * - Loads run on in clock time while the system stands still.
 * - A warning comes on at the warning level and goes off at 95 % of it. A stop ends all warnings; at a restart a unit
 *   at or above its warning level warns again. The system warns while any unit warns.
 * - While a unit's voltage is below its held ratio its mains cycles are counted; a change of load that brings it back
 *   ends the count, one that does not lets it run on.
 * - Every stop counts one; running for the reclaim time after a restart clears the count; the stop that fills it locks
 *   out. Where units differ, the longest wait, longest reclaim time and fewest stops hold (`protectionSettings`).
 * - A manual reset clears the count and, when the system stands still, starts it at once; the heat stays.
 * - At one moment: heat crossings first, then load changes, clearing of the count, voltage stops, restart, reset. So a
 *   load removed in the last instant saves the unit, and a stop on the instant of reclaim is the first of a new count.
 *
 * @param run.units          id, phase, model, ambientC [°C], altitudeM [m], heat, loads with startS [s]
 * @param run.untilS         end [s], ≥ 0
 * @param run.manualResetsS  times of manual resets [s], in order; default none
 * @param run.stopsTogether  true, and true when left out
 * @returns segments (nothing changes inside but heat), events with cause, unit and phase, and a summary of each unit
 * @throws  {RangeError} no unit, times out of order, as `allowedHeat`, or more steps than ten a load and 100 000 beside
 * Valid for: quasi-steady; a system without stored energy between phases
 * Source:  common-practice; iec-60050-448 (names such as reclaim time, from memory)
 * Example: simulateSystem({ units: [{ id: 'a', phase: 'L1', model: exampleModel, ambientC: 25, loads: [] }], untilS: 60, stopsTogether: true }).endState → 'running'
 */
export const simulateSystem = (run: SystemRun): Timeline => {
  checkRun(run);
  const { untilS } = run;
  const progress: Progress = {
    settings: protectionSettings(run.units.map((unit) => unit.model)),
    units: run.units.map(startUnitRun),
    resetsS: run.manualResetsS ?? [],
    nextReset: 0,
    protection: freshlyOn,
    timeS: 0,
    segments: [],
    events: [],
  };
  const loadCount = run.units.reduce((sum, unit) => sum + unit.loads.length, 0);
  const stepLimit = mostSteps.besideLoads + mostSteps.perLoad * loadCount;
  switchOn(progress, freshlyOn);
  for (let steps = 0; progress.timeS < untilS; steps++) {
    if (steps >= stepLimit) {
      throw new RangeError(`untilS: expected at most ${stepLimit} steps, found more by ${progress.timeS} s`);
    }
    const fixedS = nextFixedS(progress, untilS);
    if (progress.protection.kind === 'on' && passCrossing(progress, fixedS)) continue;
    passUntil(progress, fixedS);
    takeFixed(progress);
  }
  return {
    units: progress.units.map((unit) => ({
      id: unit.id,
      phase: unit.phase,
      model: unit.model,
      allowedHeatRatio: unit.allowed,
      warningHeatRatio: unit.warningLevel,
      peakHeatRatio: unit.peak,
      peakAtS: unit.peakAtS,
      heatEnd: { fast: unit.fast, slow: unit.slow },
    })),
    segments: progress.segments,
    events: progress.events,
    untilS,
    endState: stateOf(progress),
    endCount: progress.protection.count,
  };
};
