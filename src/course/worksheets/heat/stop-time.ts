import { type HeatState, type InverterModel, timeToStop } from '../../../engine/index.ts';

interface StopTimeQuestion {
  model: InverterModel;
  currentA: number;
  /** The reference ambient when absent. */
  ambientC?: number;
  /** Settled at no load when absent. */
  heat?: HeatState;
}

/** Seconds until heat stops the unit, or null when it runs for ever. */
export function stopTimeOrNull({ model, currentA, ambientC, heat }: StopTimeQuestion): number | null {
  const place = { model, currentA, ambientC: ambientC ?? model.datasheet.referenceAmbientC };
  return timeToStop(heat === undefined ? place : { ...place, heat }).timeS;
}

/**
 * Seconds until heat stops the unit.
 *
 * @throws {RangeError} when it runs for ever: a worksheet that asks for the time must not accept such numbers.
 */
export function stopTimeS(question: StopTimeQuestion): number {
  const timeS = stopTimeOrNull(question);
  if (timeS === null)
    throw new RangeError(`currentA: expected a load that stops the unit, found ${question.currentA} A`);
  return timeS;
}
