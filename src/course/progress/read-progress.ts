import { migrateAttempt, migrateSnapshot } from './migrations.ts';
import { progressLimits } from './progress-limits.ts';
import type { Progress } from './progress-types.ts';
import { listOf, readAttempt, readSnapshot } from './record-readers.ts';
import { sortedAttempts } from './sorted-attempts.ts';

/**
 * A whole record of any known version, from unknown data, in today's shape.
 *
 * @throws {RangeError} naming the first field that cannot be read
 */
export function readProgress(version: number, data: unknown): Progress {
  const snapshot = readSnapshot(migrateSnapshot(version, data), 'data');
  const attempts = listOf(progressLimits.attempts, (attempt) =>
    readAttempt(migrateAttempt(version, attempt), 'attempt'),
  )((data as { attempts?: unknown }).attempts, 'attempts');
  return { ...snapshot, attempts: sortedAttempts([], attempts) };
}
