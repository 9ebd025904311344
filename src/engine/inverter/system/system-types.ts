import type { HeatState, InverterModel } from '../model.ts';
import type { ZipLoad } from '../voltage/zip-load.ts';

export type SystemState = 'running' | 'warning' | 'stopped' | 'locked-out';

/** What stopped a unit. */
export type StopCause = 'heat' | 'voltage-lost';

/** From a time on [s, clock time], this is connected to the unit, whether it runs or not. */
export interface TimedLoad {
  readonly startS: number;
  readonly load: ZipLoad;
}

export interface SystemUnit {
  readonly id: string;
  /** name of the phase the unit feeds, as the log shall print it */
  readonly phase: string;
  readonly model: InverterModel;
  readonly ambientC: number;
  readonly altitudeM?: number;
  /** heat at the start; default: settled at no load */
  readonly heat?: HeatState;
  /** in order of time; nothing is connected before the first */
  readonly loads: readonly TimedLoad[];
}

export interface SystemRun {
  readonly units: readonly SystemUnit[];
  readonly untilS: number;
  /** times at which a person resets the system [s], in order */
  readonly manualResetsS?: readonly number[];
  /** any one unit's stop stops all: the only way these systems work; written out where it helps the reader */
  readonly stopsTogether?: true;
}

export type SystemEventKind =
  | 'load-change'
  | 'warning-on'
  | 'warning-off'
  | 'voltage-lost-begins'
  | 'voltage-recovers'
  | 'stop'
  | 'restart'
  | 'count-cleared'
  | 'lockout'
  | 'manual-reset';

export interface SystemEvent {
  readonly timeS: number;
  readonly kind: SystemEventKind;
  readonly unitId?: string;
  readonly phase?: string;
  /** of a stop */
  readonly cause?: StopCause;
  /** of a stop, a lockout: stops counted so far */
  readonly count?: number;
}

/** One unit during one segment. */
export interface UnitSegment {
  readonly id: string;
  /** current the loads would draw at nominal voltage, whether the unit runs or not [A] */
  readonly demandA: number;
  /** 0 when stopped */
  readonly currentA: number;
  readonly voltageRatio: number;
  /** real power delivered [W] */
  readonly outputW: number;
  /** heat at the start of the segment */
  readonly heatStart: HeatState;
  /** the current that heats during the segment [A]; null when stopped */
  readonly currentForHeatA: number | null;
}

/** A stretch in which nothing changes but heat. */
export interface Segment {
  readonly startS: number;
  readonly endS: number;
  readonly state: SystemState;
  readonly units: readonly UnitSegment[];
}

/** A unit over the whole run. */
export interface UnitSummary {
  readonly id: string;
  readonly phase: string;
  readonly model: InverterModel;
  /** heat at which it stops and warns in its surroundings */
  readonly allowedHeatRatio: number;
  readonly warningHeatRatio: number;
  readonly peakHeatRatio: number;
  readonly peakAtS: number;
  readonly heatEnd: HeatState;
}

export interface Timeline {
  readonly units: readonly UnitSummary[];
  readonly segments: readonly Segment[];
  readonly events: readonly SystemEvent[];
  readonly untilS: number;
  readonly endState: SystemState;
  /** stops counted at the end */
  readonly endCount: number;
}
