import type { Worksheet } from './worksheet.ts';

/**
 * Every worksheet by id, loaded on demand: a page fetches only the one its exercise needs, and its engine parts with it.
 * A test holds that each entry's key is the worksheet's own id and that no worksheet file is missing here.
 */
const worksheets: Readonly<Record<string, () => Promise<Worksheet>>> = {
  'current-from-nameplate': async () =>
    (await import('./current/current-from-nameplate.ts')).currentFromNameplate,
  'averaging-meter': async () => (await import('./current/averaging-meter.ts')).averagingMeter,
  'heat-from-current': async () => (await import('./current/heat-from-current.ts')).heatFromCurrent,
  'loads-together': async () => (await import('./current/loads-together.ts')).loadsTogether,
  'rms-of-cycle': async () => (await import('./current/rms-of-cycle.ts')).rmsOfCycle,
  'datasheet-two-ways': async () => (await import('./ratings/datasheet-two-ways.ts')).datasheetTwoWays,
  'design-rating': async () => (await import('./ratings/design-rating.ts')).designRating,
  'smallest-unit': async () => (await import('./ratings/smallest-unit.ts')).smallestUnit,
  'volts-held': async () => (await import('./ratings/volts-held.ts')).voltsHeld,
  'minutes-left': async () => (await import('./heat/minutes-left.ts')).minutesLeft,
  'hot-room': async () => (await import('./heat/hot-room.ts')).hotRoom,
  'after-previous-load': async () => (await import('./heat/after-previous-load.ts')).afterPreviousLoad,
  'repeating-duty': async () => (await import('./heat/repeating-duty.ts')).repeatingDuty,
  'next-and-when': async () => (await import('./sequence/next-and-when.ts')).nextAndWhen,
  'restart-interval': async () => (await import('./sequence/restart-interval.ts')).restartInterval,
  'which-phase': async () => (await import('./sequence/which-phase.ts')).whichPhase,
  'cycle-counter': async () => (await import('./sequence/cycle-counter.ts')).cycleCounter,
};

export const worksheetIds: readonly string[] = Object.keys(worksheets);

/** @throws {RangeError} for an id that is not registered. */
export async function loadWorksheet(id: string): Promise<Worksheet> {
  const load = worksheets[id];
  if (!load) throw new RangeError(`worksheet: expected one of ${worksheetIds.join(', ')}, found "${id}"`);
  return load();
}
