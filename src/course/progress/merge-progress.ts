import { mergeMarks } from './merge-marks.ts';
import { ownValue } from './own-value.ts';
import type { Draft, Progress } from './progress-types.ts';
import { sortedAttempts } from './sorted-attempts.ts';

/**
 * Two records of one learner made into one; nothing earned is lost. Attempts: union by id, an attempt already here
 * stays as it is. Drafts: the newer. Lessons: ticks united, the later visit, the
 * earlier completion. Settings stay those of this device.
 */
export function mergeProgress(mine: Progress, incoming: Progress): Progress {
  return {
    attempts: sortedAttempts(mine.attempts, incoming.attempts),
    drafts: mergeRecords(mine.drafts, incoming.drafts, newerDraft),
    lessons: mergeRecords(mine.lessons, incoming.lessons, mergeMarks),
    settings: mine.settings,
  };
}

function mergeRecords<T>(
  mine: Readonly<Record<string, T>>,
  incoming: Readonly<Record<string, T>>,
  merge: (a: T, b: T) => T,
): Readonly<Record<string, T>> {
  const merged = { ...mine };
  for (const [key, theirs] of Object.entries(incoming)) {
    const ours = ownValue(merged, key);
    merged[key] = ours === undefined ? theirs : merge(ours, theirs);
  }
  return merged;
}

function newerDraft(a: Draft, b: Draft): Draft {
  if (a.at !== b.at) return a.at > b.at ? a : b;
  // Same moment, other text: any fixed choice will do, as long as every device makes the same one.
  return JSON.stringify(a) >= JSON.stringify(b) ? a : b;
}
