import { continuousCurrentA, type InverterModel } from '../../../engine/index.ts';
import { stopTimeOrNull } from './stop-time.ts';
import { currentRows } from './table-rows.ts';

/** A unit and the air around it. */
export interface Room {
  inverter: InverterModel;
  roomC: number;
}

export const continuousOf = ({ inverter, roomC }: Room): number =>
  continuousCurrentA({ model: inverter, ambientC: roomC });

/** What the straight line through the two stated ratings gives, so many kelvin above the reference ambient. */
export function onStraightLine(inverter: InverterModel, aboveReferenceK: number): number {
  const { hot, referenceAmbientC } = inverter.datasheet;
  const lostPerKelvinA = (inverter.continuousA - inverter.hotA) / (hot.ambientC - referenceAmbientC);
  return inverter.continuousA - lostPerKelvinA * aboveReferenceK;
}

export const curveAt = (inverter: InverterModel, ambientC: number) => (currentA: number) =>
  stopTimeOrNull({ model: inverter, currentA, ambientC });

/** Ambients that the printed table has a column for: those of both ratings, and the room's own. */
export const columnsOf = ({ inverter, roomC }: Room): number[] =>
  [inverter.datasheet.referenceAmbientC, inverter.datasheet.hot.ambientC, roomC].sort((a, b) => a - b);

/** Currents that the printed table has a row for. */
export const rowsOf = ({ inverter, roomC }: Room): readonly number[] =>
  currentRows({
    continuousA: Math.min(inverter.continuousA, continuousOf({ inverter, roomC })),
    limitA: inverter.limitA,
  });

/** The time at the reference ambient, shortened as the current is: the wrong thing derated. */
export function deratedTime({ inverter, roomC }: Room, loadA: number): number | null {
  const timeS = stopTimeOrNull({ model: inverter, currentA: loadA });
  return timeS === null ? null : (timeS * continuousOf({ inverter, roomC })) / inverter.continuousA;
}
