import type { Progress } from './progress-types.ts';

/**
 * Best share of the marks over all attempts at an exercise.
 *
 * @returns ratio [1], 0 … 1; null when it was never attempted or had no marks to give
 */
export function bestScoreRatio(progress: Pick<Progress, 'attempts'>, exerciseUid: string): number | null {
  let best: number | null = null;
  for (const { exerciseUid: uid, earned, possible } of progress.attempts) {
    if (uid !== exerciseUid || possible <= 0) continue;
    best = Math.max(best ?? 0, Math.min(1, earned / possible));
  }
  return best;
}
