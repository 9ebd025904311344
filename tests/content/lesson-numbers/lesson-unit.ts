import {
  allowedHeat,
  continuousCurrentA,
  currentForTime,
  dutyHeat,
  type HeatState,
  heatAfter,
  historyHeat,
  type InverterModel,
  lossW,
  settledHeat,
  timeToStop,
} from '../../../src/engine/index.ts';
import { found, unit } from './lesson-number.ts';

/** The lessons think in volt-amperes at 230 V; the engine counts amperes. */
export const amperes = (apparentPowerVa: number): number => apparentPowerVa / 230;

/** One part of a repeating duty, as a lesson states it: load [VA] and time [s]. */
type Stage = readonly [va: number, forS: number];

/** The questions that lessons put to one unit, in the units in which they put them. */
export function lessonUnit(id: string) {
  const model: InverterModel = unit(id);
  const referenceC = model.datasheet.referenceAmbientC;
  const segmentsOf = (stages: readonly Stage[]) =>
    stages.map(([va, durationS]) => ({ durationS, currentA: amperes(va) }));
  const history = (stages: readonly Stage[], cycles: number, ambientC: number) => {
    const all = Array.from({ length: cycles }, () => segmentsOf(stages)).flat();
    return historyHeat({
      model,
      durationsS: Float64Array.from(all, ({ durationS }) => durationS),
      currentsA: Float64Array.from(all, ({ currentA }) => currentA),
      allowedHeatRatio: allowedHeat({ model, ambientC }),
    });
  };
  return {
    model,
    lossesAt: (currentA: number) => lossW(model, currentA),
    /** Seconds to the stop; Infinity for ever. */
    lastsS: (va: number, ambientC = referenceC, heat?: HeatState) =>
      timeToStop({ model, currentA: amperes(va), ambientC, ...(heat && { heat }) }).timeS ??
      Number.POSITIVE_INFINITY,
    heatAfter: (va: number, durationS: number, heat = settledHeat(model, 0)) =>
      heatAfter({ model, heat, currentA: amperes(va), durationS }),
    continuousVa: (ambientC: number) => 230 * continuousCurrentA({ model, ambientC }),
    vaFor: (timeS: number, ambientC: number) => 230 * currentForTime({ model, timeS, ambientC }),
    allowedAt: (ambientC: number) => allowedHeat({ model, ambientC }),
    /** Heat of a duty that repeats for ever. */
    duty: (...stages: Stage[]) => dutyHeat({ model, segments: segmentsOf(stages) }),
    /** Seconds until a duty, from idle, first stops the unit; and until it first warns. */
    dutyStopsS: (stages: readonly Stage[], ambientC: number) =>
      found(history(stages, 400, ambientC).firstStopS),
    dutyWarnsS: (stages: readonly Stage[], ambientC: number) =>
      found(history(stages, 400, ambientC).firstWarningS),
    dutyNeverStops: (stages: readonly Stage[], ambientC: number) =>
      history(stages, 400, ambientC).firstStopS === null,
  };
}
