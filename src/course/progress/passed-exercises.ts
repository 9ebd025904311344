import type { Progress } from './progress-types.ts';

/**
 * Share of the marks at which an exercise counts as passed [1]. Common practice, no source: one step in five may go
 * wrong, which leaves room for a typing error but not for a misunderstanding that runs through the sheet.
 */
export const passRatio = 0.8;

/** Marks are sums of fractions, so a score of exactly four fifths may come out a hair below. */
const rounding = 1e-9;

/** Uids of the exercises passed in at least one attempt. */
export function passedExercises(progress: Pick<Progress, 'attempts'>): ReadonlySet<string> {
  const passed = new Set<string>();
  for (const { exerciseUid, earned, possible } of progress.attempts) {
    if (possible > 0 && earned / possible >= passRatio - rounding) passed.add(exerciseUid);
  }
  return passed;
}
