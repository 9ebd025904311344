import type { Progress } from './progress-types.ts';

export interface SlipTally {
  readonly slip: string;
  /** Steps in which the slip was found. */
  readonly count: number;
  /** Moment of the latest of them [ms since 1970]. */
  readonly lastAt: number;
}

/** Every slip found so far, most frequent first; equal counts by id, so that the order never flickers. */
export function slipTally(progress: Pick<Progress, 'attempts'>): readonly SlipTally[] {
  const tallies = new Map<string, SlipTally>();
  for (const attempt of progress.attempts) {
    for (const slip of attempt.steps.flatMap((step) => [...new Set(step.slips)])) {
      const { count, lastAt } = tallies.get(slip) ?? { count: 0, lastAt: attempt.at };
      tallies.set(slip, { slip, count: count + 1, lastAt: Math.max(lastAt, attempt.at) });
    }
  }
  return [...tallies.values()].sort((a, b) => b.count - a.count || (a.slip < b.slip ? -1 : 1));
}
