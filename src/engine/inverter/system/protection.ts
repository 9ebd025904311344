import type { InverterModel } from '../model.ts';

/** How the system behaves after a stop. */
export interface ProtectionSettings {
  readonly waitS: number;
  readonly reclaimS: number;
  readonly stopsToLockout: number;
}

/** Where the stop-and-restart sequence stands. Times are clock times [s]; Infinity: never. */
export type Protection =
  | { readonly kind: 'on'; readonly count: number; readonly clearAtS: number }
  | { readonly kind: 'stopped'; readonly count: number; readonly restartAtS: number }
  | { readonly kind: 'locked-out'; readonly count: number };

/**
 * The settings a system goes by. Units of one system should agree; where they do not, the cautious value counts:
 * the longest wait, the longest reclaim time, the fewest stops to lockout.
 *
 * @param models  the system's units, at least one
 * @returns waitS [s], reclaimS [s], stopsToLockout
 * @throws  {RangeError} no unit
 * Source:  common-practice
 * Example: protectionSettings([exampleModel]).waitS → 30
 */
export const protectionSettings = (models: readonly InverterModel[]): ProtectionSettings => {
  if (models.length === 0) throw new RangeError('units: expected at least one, found none');
  const sheets = models.map((model) => model.datasheet);
  return {
    waitS: Math.max(...sheets.map((sheet) => sheet.waitS)),
    reclaimS: Math.max(...sheets.map((sheet) => sheet.reclaimS)),
    stopsToLockout: Math.min(...sheets.map((sheet) => sheet.stopsToLockout)),
  };
};

/** Running from the start or from a reset: no stops counted, so nothing to clear. */
export const freshlyOn: Protection = { kind: 'on', count: 0, clearAtS: Number.POSITIVE_INFINITY };

/**
 * A stop while running: one more is counted, since a count not yet cleared means the last restart is less than the
 * reclaim time ago. The stop that fills the count locks out.
 *
 * @param settings    waitS [s], reclaimS [s], stopsToLockout
 * @param protection  where the sequence stands: on
 * @param timeS       clock time of the stop [s]
 * @returns stopped until the fixed wait is over, or locked out
 * @throws  nothing
 * Source:  common-practice; iec-60050-448 (names such as reclaim time, from memory)
 * Example: afterStop({ waitS: 30, reclaimS: 120, stopsToLockout: 3 }, freshlyOn, 100).kind → 'stopped'
 */
export const afterStop = (
  settings: ProtectionSettings,
  protection: Protection,
  timeS: number,
): Protection => {
  const count = protection.count + 1;
  return count >= settings.stopsToLockout
    ? { kind: 'locked-out', count }
    : { kind: 'stopped', count, restartAtS: timeS + settings.waitS };
};

/**
 * The restart after the wait: the count stays until the reclaim time has passed.
 *
 * @param settings    waitS [s], reclaimS [s], stopsToLockout
 * @param protection  where the sequence stands: stopped
 * @param timeS       clock time of the restart [s]
 * @returns on, with the time at which the count is cleared
 * @throws  nothing
 * Source:  common-practice
 * Example: afterRestart({ waitS: 30, reclaimS: 120, stopsToLockout: 3 }, { kind: 'stopped', count: 1, restartAtS: 130 }, 130).count → 1
 */
export const afterRestart = (
  settings: ProtectionSettings,
  protection: Protection,
  timeS: number,
): Protection => ({ kind: 'on', count: protection.count, clearAtS: timeS + settings.reclaimS });
