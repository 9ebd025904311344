import { checksum } from './checksum.ts';
import { currentVersion, migrateAttempt, migrateSnapshot } from './migrations.ts';
import type { Attempt, Progress, Snapshot } from './progress-types.ts';
import { readProgress } from './read-progress.ts';
import { readAttempt, readSnapshot } from './record-readers.ts';

/** One record as it is stored: the value as text, so that damage can be found and the text kept as it is. */
export interface StoredRow {
  readonly id: string;
  readonly version: number;
  readonly body: string;
  /** Of id, version and body, one a line. */
  readonly checksum: string;
}

export type RowReading<T> =
  | { readonly kind: 'read'; readonly value: T }
  /** `raw`: the row as found, to be kept aside. */
  | { readonly kind: 'damaged' | 'newer-version'; readonly detail: string; readonly raw: string };

const sum = (id: string, version: number, body: string): string => checksum(`${id}\n${version}\n${body}`);

export function writeRow(id: string, value: Attempt | Snapshot | Progress): StoredRow {
  const body = JSON.stringify(value);
  return { id, version: currentVersion, body, checksum: sum(id, currentVersion, body) };
}

export const readAttemptRow = (row: unknown): RowReading<Attempt> =>
  readRow(row, (version, value) => readAttempt(migrateAttempt(version, value), 'attempt'));

export const readSnapshotRow = (row: unknown): RowReading<Snapshot> =>
  readRow(row, (version, value) => readSnapshot(migrateSnapshot(version, value), 'snapshot'));

/** A row holding the whole record. */
export const readProgressRow = (row: unknown): RowReading<Progress> => readRow(row, readProgress);

function readRow<T>(row: unknown, read: (version: number, value: unknown) => T): RowReading<T> {
  try {
    const { id, version, body, checksum: noted } = row as StoredRow;
    // A newer version may sum up otherwise, so it is recognised before anything else is judged.
    if (Number.isSafeInteger(version) && version > currentVersion) {
      return { kind: 'newer-version', detail: String(version), raw: rawText(row) };
    }
    if (version !== 1 && version !== currentVersion) throw new RangeError('version');
    if (sum(id, version, body) !== noted) throw new RangeError('checksum');
    return { kind: 'read', value: read(version, JSON.parse(body)) };
  } catch (cause) {
    return { kind: 'damaged', detail: String(cause), raw: rawText(row) };
  }
}

/** Anything a store can hold, as text. */
function rawText(row: unknown): string {
  try {
    return JSON.stringify(row) ?? typeof row;
  } catch {
    // A value JSON has no words for; no release has ever stored one.
    return typeof row;
  }
}
