import type { Attempt } from './progress-types.ts';

/**
 * The log with more attempts taken in: each id once, sorted by time and then id, so that two devices holding the same
 * attempts hold the same log. An attempt already in the log is never replaced.
 */
export function sortedAttempts(log: readonly Attempt[], more: readonly Attempt[]): readonly Attempt[] {
  const known = new Set(log.map((attempt) => attempt.id));
  const fresh = more.filter((attempt) => !known.has(attempt.id) && known.add(attempt.id));
  if (fresh.length === 0) return log;
  return [...log, ...fresh].sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
}
