import type { Draft } from './progress-types.ts';

/** Key of a draft: one draft per exercise and seed, so other numbers never overwrite what was typed. */
export function draftKey(draft: Pick<Draft, 'exerciseUid' | 'seed'>): string {
  return `${draft.exerciseUid}#${draft.seed}`;
}
