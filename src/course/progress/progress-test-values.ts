import fc from 'fast-check';
import { draftKey } from './draft-key.ts';
import { forbiddenKeys } from './progress-limits.ts';
import type { Attempt, Draft, LessonMark, Progress } from './progress-types.ts';
import { sortedAttempts } from './sorted-attempts.ts';

/** Few different ids, so that two records meet in them; now and then an odd one. */
export const anyId = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom('a', 'b', 'c', 'toString', '7', 'é#1') },
  { weight: 1, arbitrary: fc.string({ minLength: 1, maxLength: 12 }).filter((id) => !forbiddenKeys.has(id)) },
);
const anyTime = fc.integer({ min: -5, max: 2e12 });
const anyMarks = fc.double({ min: 0, max: 10, noNaN: true }).map((value) => value + 0);
const anyText = fc.string({ unit: 'binary', maxLength: 12 });

/** As in life, all that an attempt holds follows from its id: no id stands for two attempts. */
export const anyAttempt: fc.Arbitrary<Attempt> = fc
  .record({
    exerciseUid: anyId,
    seed: fc.nat(3),
    at: anyTime,
    steps: fc.array(
      fc.record({
        stepId: anyId,
        given: anyText,
        earned: anyMarks,
        possible: anyMarks,
        carried: fc.boolean(),
        slips: fc.array(anyId, { maxLength: 2 }),
      }),
      { maxLength: 3 },
    ),
    earned: anyMarks,
    possible: anyMarks,
    hintsUsed: fc.nat(4),
  })
  .map((content) => ({ id: `attempt ${JSON.stringify(content)}`.slice(0, 190), ...content }));

export const anyDraft: fc.Arbitrary<Draft> = fc.record({
  exerciseUid: anyId,
  seed: fc.nat(2),
  answers: fc
    .uniqueArray(fc.tuple(anyId, anyText), { selector: ([id]) => id, maxLength: 3 })
    .map(Object.fromEntries),
  at: anyTime,
});

const anyMark: fc.Arbitrary<LessonMark> = fc.record({
  lessonUid: anyId,
  canDo: fc.uniqueArray(anyId, { maxLength: 3 }).map((ids) => ids.sort()),
  visitedAt: anyTime,
  doneAt: fc.option(anyTime),
});

export const anyProgress: fc.Arbitrary<Progress> = fc
  .record({
    attempts: fc.array(anyAttempt, { maxLength: 5 }),
    drafts: fc.array(anyDraft, { maxLength: 4 }),
    marks: fc.array(anyMark, { maxLength: 4 }),
    theme: fc.constantFrom('auto', 'light', 'dark'),
  })
  .map(({ attempts, drafts, marks, theme }) => ({
    attempts: sortedAttempts([], attempts),
    drafts: Object.fromEntries(drafts.map((draft) => [draftKey(draft), draft])),
    lessons: Object.fromEntries(marks.map((mark) => [mark.lessonUid, mark])),
    settings: { theme },
  }));

/** An attempt of which only the named fields matter to a test. */
export function attemptWith(fields: Partial<Attempt>): Attempt {
  return {
    id: 'a-1',
    exerciseUid: 'ex-mill',
    seed: 7,
    at: 1_000,
    steps: [{ stepId: 'current', given: '34,8 A', earned: 1, possible: 1, carried: false, slips: [] }],
    earned: 1,
    possible: 1,
    hintsUsed: 0,
    ...fields,
  };
}
