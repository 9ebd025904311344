import type { StopCause, SystemEventKind, TimedLoad, ZipLoad } from '../../src/engine/inverter/index.ts';
import type { KnownInverter } from './arbitraries.ts';
import { currentAt, voltageByWalking } from './stepwise-voltage.ts';

/** The same system as the engine's, told by what was drawn and not by what the engine solved. */
export interface StepwiseUnit {
  readonly id: string;
  readonly known: KnownInverter;
  readonly ambientC: number;
  readonly loads: readonly TimedLoad[];
}

export interface StepwiseEvent {
  readonly timeS: number;
  readonly kind: SystemEventKind;
  readonly unitId?: string;
  readonly cause?: StopCause;
}

export interface StepwiseResult {
  readonly events: readonly StepwiseEvent[];
  readonly units: readonly { peak: number; fast: number; slow: number; inputJ: number }[];
}

const makeUnit = ({ id, known, ambientC, loads }: StepwiseUnit) => {
  const sheet = known.datasheet;
  const nominalV = sheet.acNominalV;
  const ratedA = sheet.continuous.power.value / nominalV;
  const fullW = sheet.continuous.power.value * (1 / sheet.efficiencyFullRatio - 1);
  const halfW = (sheet.continuous.power.value / 2) * (1 / sheet.efficiencyHalfRatio - 1);
  const a = sheet.idleLossW;
  // a + b + c = full, a + b/2 + c/4 = half, with b and c at the rated current
  const c = 2 * (fullW - a) - 4 * (halfW - a);
  const b = fullW - a - c;
  const lossW = (currentA: number): number => a + (b * currentA) / ratedA + c * (currentA / ratedA) ** 2;
  const allowed = (known.limitC - ambientC) / (known.limitC - sheet.referenceAmbientC);
  const w = known.fastShareRatio;
  const idle = a / fullW;
  return {
    id,
    known,
    loads,
    sheet,
    lossW,
    fullW,
    w,
    allowed,
    warnAt: allowed * sheet.warnAtHeatRatio,
    limitA: sheet.currentLimit.power.value / nominalV,
    fast: w * idle,
    slow: (1 - w) * idle,
    peak: idle,
    inputJ: 0,
    next: 0,
    voltage: 1,
    currentA: 0,
    outputW: 0,
    warned: false,
    lostSinceS: Number.NaN,
  };
};

type Unit = ReturnType<typeof makeUnit>;

const connect = (unit: Unit, load: ZipLoad): void => {
  const nominalV = unit.sheet.acNominalV;
  unit.voltage = voltageByWalking(load, nominalV, unit.limitA);
  unit.currentA = unit.voltage === 1 ? currentAt(load, nominalV, 1) : unit.limitA;
  unit.outputW =
    unit.voltage === 0
      ? 0
      : load.impedance.realW * unit.voltage ** 2 + load.current.realW * unit.voltage + load.power.realW;
};

/** One Runge–Kutta step of dx/dt = (target − x)/τ. */
const rungeKutta = (x: number, target: number, timeConstantS: number, stepS: number): number => {
  const slope = (at: number): number => (target - at) / timeConstantS;
  const k1 = slope(x);
  const k2 = slope(x + (stepS / 2) * k1);
  const k3 = slope(x + (stepS / 2) * k2);
  const k4 = slope(x + stepS * k3);
  return x + (stepS / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
};

/**
 * The plain method, as a second opinion on the engine: small fixed steps, thresholds by halving the step, voltage by
 * walking down, protection as a row of ifs. Shares no code with the engine.
 */
export const simulateStepwise = (run: {
  units: readonly StepwiseUnit[];
  untilS: number;
  stepS: number;
  manualResetsS?: readonly number[];
}): StepwiseResult => {
  const units = run.units.map(makeUnit);
  const waitS = Math.max(...units.map((unit) => unit.sheet.waitS));
  const reclaimS = Math.max(...units.map((unit) => unit.sheet.reclaimS));
  const stopsToLockout = Math.min(...units.map((unit) => unit.sheet.stopsToLockout));
  const resets = [...(run.manualResetsS ?? [])];
  const events: StepwiseEvent[] = [];
  let now = 0;
  let on = true;
  let locked = false;
  let count = 0;
  let stoppedAtS = Number.NaN;
  let restartedAtS = Number.NaN;

  const log = (kind: SystemEventKind, unit?: Unit, cause?: StopCause): void => {
    events.push({ timeS: now, kind, ...(unit ? { unitId: unit.id } : {}), ...(cause ? { cause } : {}) });
  };
  const stop = (unit: Unit, cause: StopCause): void => {
    on = false;
    count++;
    stoppedAtS = now;
    restartedAtS = Number.NaN;
    log('stop', unit, cause);
    locked = count >= stopsToLockout;
    if (locked) log('lockout', unit);
    for (const other of units) {
      other.warned = false;
      other.lostSinceS = Number.NaN;
    }
  };
  const checkVoltage = (unit: Unit): void => {
    const held = unit.voltage >= unit.sheet.voltageHeldRatio;
    if (!held && Number.isNaN(unit.lostSinceS)) {
      unit.lostSinceS = now;
      log('voltage-lost-begins', unit);
    }
    if (held && !Number.isNaN(unit.lostSinceS)) {
      unit.lostSinceS = Number.NaN;
      log('voltage-recovers', unit);
    }
  };
  const start = (): void => {
    on = true;
    const tooHot = units.find((unit) => unit.fast + unit.slow > unit.allowed);
    if (tooHot) {
      stop(tooHot, 'heat');
      return;
    }
    for (const unit of units) {
      if (unit.fast + unit.slow >= unit.warnAt) {
        unit.warned = true;
        log('warning-on', unit);
      }
      checkVoltage(unit);
    }
  };
  const lostUntilS = (unit: Unit): number =>
    unit.lostSinceS + unit.sheet.voltageLostCycles / unit.sheet.frequencyHz;

  const takeLoads = (silent: boolean): void => {
    for (const unit of units) {
      let changed = false;
      let coming = unit.loads[unit.next];
      while (coming && coming.startS <= now) {
        connect(unit, coming.load);
        changed = true;
        coming = unit.loads[++unit.next];
      }
      if (changed && !silent) {
        log('load-change', unit);
        if (on) checkVoltage(unit);
      }
    }
  };

  takeLoads(true);
  start();
  while (now < run.untilS) {
    const known = [
      run.untilS,
      resets[0],
      on ? restartedAtS + reclaimS : stoppedAtS + (locked ? Number.NaN : waitS),
    ];
    for (const unit of units) known.push(unit.loads[unit.next]?.startS, lostUntilS(unit));
    const nextS = known.reduce<number>((least, t) => (t !== undefined && t < least ? t : least), run.untilS);
    let stepS = Math.min(run.stepS, nextS - now);
    let trial: { fast: number; slow: number }[] = [];
    for (;;) {
      trial = units.map((unit) => {
        const target = on ? unit.lossW(unit.currentA) / unit.fullW : 0;
        return {
          fast: rungeKutta(unit.fast, unit.w * target, unit.known.fastTimeConstantS, stepS),
          slow: rungeKutta(unit.slow, (1 - unit.w) * target, unit.sheet.heatSinkTimeConstantS, stepS),
        };
      });
      const crosses = units.some((unit, i) => {
        const part = trial[i];
        const heat = part ? part.fast + part.slow : 0;
        if (!unit.warned) return heat > unit.warnAt;
        return heat > unit.allowed || heat < 0.95 * unit.warnAt;
      });
      if (!on || !crosses || stepS < 1e-7) break;
      stepS /= 2;
    }
    const reachesNext = stepS === nextS - now;
    units.forEach((unit, i) => {
      unit.fast = trial[i]?.fast ?? 0;
      unit.slow = trial[i]?.slow ?? 0;
      unit.peak = Math.max(unit.peak, unit.fast + unit.slow);
      if (on) unit.inputJ += stepS * (unit.outputW + unit.lossW(unit.currentA));
    });
    now = reachesNext ? nextS : now + stepS;
    for (const unit of units) {
      if (!on) break;
      const heat = unit.fast + unit.slow;
      if (unit.warned && heat > unit.allowed) stop(unit, 'heat');
      else if (unit.warned && heat < 0.95 * unit.warnAt) {
        unit.warned = false;
        log('warning-off', unit);
      } else if (!unit.warned && heat > unit.warnAt) {
        unit.warned = true;
        log('warning-on', unit);
      }
    }
    takeLoads(false);
    if (on && now >= restartedAtS + reclaimS) {
      count = 0;
      restartedAtS = Number.NaN;
      log('count-cleared');
    }
    for (const unit of units) if (now >= lostUntilS(unit)) stop(unit, 'voltage-lost');
    if (!on && !locked && now >= stoppedAtS + waitS) {
      restartedAtS = now;
      log('restart');
      start();
    }
    while (resets[0] !== undefined && now >= resets[0]) {
      resets.shift();
      log('manual-reset');
      count = 0;
      restartedAtS = Number.NaN;
      if (on) continue;
      locked = false;
      start();
    }
  }
  return { events, units: units.map(({ peak, fast, slow, inputJ }) => ({ peak, fast, slow, inputJ })) };
};
