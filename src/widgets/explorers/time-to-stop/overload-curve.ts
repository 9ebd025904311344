import {
  continuousCurrentA,
  currentForTime,
  type HeatState,
  type InverterModel,
  type OverloadLevel,
  overloadLevel,
  settledHeat,
  timeToStop,
} from '../../../engine/index.ts';

/** What the learner has set. */
export interface StopSetting {
  readonly inverterId: string;
  readonly loadA: number;
  readonly ambientC: number;
  /** current before, carried until the heat had settled [A] */
  readonly beforeA: number;
  readonly altitudeM: number;
}

export interface StopPoint {
  readonly currentA: number;
  readonly timeS: number;
}

/** Ends of the time axis [s]; a few cycles of lost voltage still have room. */
export const shortestS = 0.05;
export const longestS = 36_000;

const pointCount = 72;

interface Place {
  readonly model: InverterModel;
  readonly ambientC: number;
  readonly altitudeM?: number;
  readonly heat?: HeatState;
}

/** The inverse-time curve from the current limit down, times in equal ratios; it ends where the axis does. */
export function overloadCurve(place: Place): StopPoint[] {
  const { limitA } = place.model;
  const { timeS: limitS } = timeToStop({ ...place, currentA: limitA });
  // Too hot to begin with, or for ever even at its limit: there is no curve.
  if (limitS === 0 || limitS === null || limitS >= longestS) return [];
  const startS = Math.max(limitS, shortestS);
  const ratio = (longestS / startS) ** (1 / (pointCount - 1));
  const points: StopPoint[] = [];
  for (let i = 0; i < pointCount; i++) {
    const timeS = startS * ratio ** i;
    const currentA = currentForTime({ ...place, timeS });
    points.push({ currentA: Math.min(currentA, limitA), timeS });
    if (currentA === 0) break;
  }
  return points;
}

/** Where the levels change, in these surroundings [A]. */
export interface LevelBounds {
  readonly continuousA: number;
  readonly longDurationA: number;
  readonly limitA: number;
}

export interface StopAnswer {
  readonly level: OverloadLevel;
  /** null: for ever */
  readonly timeS: number | null;
  readonly bounds: LevelBounds;
  readonly curve: readonly StopPoint[];
}

/** Time from losing the voltage to the stop [s]. */
export function voltageLostS({ datasheet }: InverterModel): number {
  return datasheet.voltageLostCycles / datasheet.frequencyHz;
}

/** How long the unit carries a current in a place; above its limit, how long without held voltage. */
export function stopTime(place: Place & { readonly currentA: number }): number | null {
  const { model, currentA } = place;
  const byHeat = timeToStop(place).timeS;
  if (byHeat === 0 || currentA <= model.limitA) return byHeat;
  return Math.min(byHeat ?? Number.POSITIVE_INFINITY, voltageLostS(model));
}

export function stopAnswer(model: InverterModel, setting: StopSetting): StopAnswer {
  const { ambientC, altitudeM, loadA, beforeA } = setting;
  const surroundings = { model, ambientC, altitudeM };
  const place = { ...surroundings, heat: settledHeat(model, beforeA) };
  return {
    level: overloadLevel({ ...surroundings, demandA: loadA }),
    timeS: stopTime({ ...place, currentA: loadA }),
    bounds: {
      continuousA: Math.min(continuousCurrentA(surroundings), model.limitA),
      longDurationA: Math.min(
        currentForTime({ ...surroundings, timeS: model.datasheet.longDuration.durationS }),
        model.limitA,
      ),
      limitA: model.limitA,
    },
    curve: overloadCurve(place),
  };
}

/** The greatest load that can be set [A]: well beyond the limit, on a round raster. */
export function greatestLoadA({ limitA }: InverterModel): number {
  return Math.ceil(limitA * 1.3);
}

/** The setting an inverter begins with: a load between its long-duration and its surge rating. */
export function firstSetting(inverterId: string, model: InverterModel): StopSetting {
  return {
    inverterId,
    loadA: Math.round(model.longDurationA * 1.2 * 10) / 10,
    ambientC: 40,
    beforeA: 0,
    altitudeM: 0,
  };
}
