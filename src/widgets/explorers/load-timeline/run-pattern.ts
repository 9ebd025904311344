import {
  heatAfter,
  type InverterModel,
  noLoad,
  type StopCause,
  type SystemState,
  simulateSystem,
  type Timeline,
} from '../../../engine/index.ts';
import type { PlotPoint } from '../../shared/chart/line-path.ts';
import type { PatternSetting } from './pattern.ts';

export interface PatternRun {
  readonly timeline: Timeline;
  readonly lengthS: number;
  readonly allowedHeat: number;
  /** the highest heat as a share of what is allowed here, and when */
  readonly peakRatio: number;
  readonly peakAtS: number;
  readonly stops: number;
  readonly firstStop: { readonly timeS: number; readonly cause: StopCause } | null;
  readonly offS: number;
  readonly endState: SystemState;
}

/** Runs a pattern; its loads behave as heaters. */
export function runPattern(model: InverterModel, { parts, ambientC }: PatternSetting): PatternRun {
  let clockS = 0;
  const loads = parts.map(({ loadVa, minutes }) => {
    const startS = clockS;
    clockS += minutes * 60;
    return { startS, load: { ...noLoad, impedance: { realW: loadVa, reactiveVar: 0 } } };
  });
  const timeline = simulateSystem({
    units: [{ id: 'unit', phase: 'L1', model, ambientC, loads }],
    untilS: clockS,
    stopsTogether: true,
  });
  const [unit] = timeline.units;
  const allowedHeat = unit?.allowedHeatRatio ?? 1;
  const stops = timeline.events.filter(({ kind }) => kind === 'stop');
  const [first] = stops;
  return {
    timeline,
    lengthS: clockS,
    allowedHeat,
    peakRatio: (unit?.peakHeatRatio ?? 0) / allowedHeat,
    peakAtS: unit?.peakAtS ?? 0,
    stops: stops.length,
    firstStop: first?.cause ? { timeS: first.timeS, cause: first.cause } : null,
    offS: timeline.segments
      .filter(({ state }) => state === 'stopped' || state === 'locked-out')
      .reduce((sum, { startS, endS }) => sum + endS - startS, 0),
    endState: timeline.endState,
  };
}

/** The run as lines: heat in per cent of what is allowed here, currents in A, voltage in per cent. Time in s. */
export interface PatternSeries {
  readonly whole: readonly PlotPoint[];
  readonly fast: readonly PlotPoint[];
  readonly slow: readonly PlotPoint[];
  readonly delivered: readonly PlotPoint[];
  readonly wanted: readonly PlotPoint[];
  readonly voltage: readonly PlotPoint[];
  readonly mostA: number;
}

/** Steps for the heat of a segment: some for any, more for a long one. A smooth curve needs no more on a screen. */
const leastSteps = 5;
const heatSteps = 100;

export function patternSeries({ timeline, lengthS, allowedHeat }: PatternRun): PatternSeries {
  const whole: PlotPoint[] = [];
  const fast: PlotPoint[] = [];
  const slow: PlotPoint[] = [];
  const delivered: PlotPoint[] = [];
  const wanted: PlotPoint[] = [];
  const voltage: PlotPoint[] = [];
  let mostA = 0;
  const [unit] = timeline.units;
  const perHeat = 100 / allowedHeat;
  for (const { startS, endS, units } of timeline.segments) {
    const [part] = units;
    if (!part || !unit) continue;
    const ends = [startS, endS];
    for (const x of ends) {
      delivered.push({ x, y: part.currentA });
      wanted.push({ x, y: part.demandA });
      voltage.push({ x, y: 100 * part.voltageRatio });
    }
    mostA = Math.max(mostA, part.demandA);
    const steps = leastSteps + Math.ceil(((endS - startS) / lengthS) * heatSteps);
    for (let i = 0; i <= steps; i++) {
      // Closer together at the start, where an exponential bends most.
      const durationS = (endS - startS) * (i / steps) ** 2;
      const heat = heatAfter({
        model: unit.model,
        heat: part.heatStart,
        currentA: part.currentForHeatA,
        durationS,
      });
      const x = startS + durationS;
      fast.push({ x, y: heat.fast * perHeat });
      slow.push({ x, y: heat.slow * perHeat });
      whole.push({ x, y: (heat.fast + heat.slow) * perHeat });
    }
  }
  return { whole, fast, slow, delivered, wanted, voltage, mostA };
}
