import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mergeProgress } from './merge-progress.ts';
import { anyProgress, attemptWith } from './progress-test-values.ts';
import { emptyProgress, type Progress } from './progress-types.ts';

/** Settings belong to the device; the laws are about the rest. */
const learnt = ({ settings: _, ...rest }: Progress) => rest;

test('the order of merging does not matter', () => {
  fc.assert(
    fc.property(anyProgress, anyProgress, anyProgress, (a, b, c) => {
      expect(learnt(mergeProgress(a, b))).toEqual(learnt(mergeProgress(b, a)));
      expect(learnt(mergeProgress(mergeProgress(a, b), c))).toEqual(
        learnt(mergeProgress(a, mergeProgress(b, c))),
      );
    }),
  );
});

test('merging a record with itself, or with nothing, changes nothing', () => {
  fc.assert(
    fc.property(anyProgress, (a) => {
      expect(mergeProgress(a, a)).toEqual(a);
      expect(mergeProgress(a, emptyProgress)).toEqual(a);
    }),
  );
});

test('nothing earned on either side is lost', () => {
  fc.assert(
    fc.property(anyProgress, anyProgress, (a, b) => {
      const merged = mergeProgress(a, b);
      for (const side of [a, b]) {
        expect(merged.attempts).toEqual(expect.arrayContaining([...side.attempts]));
        expect(Object.keys(merged.drafts)).toEqual(expect.arrayContaining(Object.keys(side.drafts)));
        for (const [uid, mark] of Object.entries(side.lessons)) {
          expect(merged.lessons[uid]?.canDo).toEqual(expect.arrayContaining([...mark.canDo]));
          if (mark.doneAt !== null) expect(merged.lessons[uid]?.doneAt).not.toBeNull();
        }
      }
    }),
  );
});

test('an attempt already in the log is not replaced by another of the same id', () => {
  const mine = { ...emptyProgress, attempts: [attemptWith({ earned: 1 })] };
  const theirs = { ...emptyProgress, attempts: [attemptWith({ earned: 0 })] };
  expect(mergeProgress(mine, theirs).attempts[0]?.earned).toBe(1);
});

test('the newer draft wins, whichever side it is on', () => {
  const draft = (text: string, at: number): Progress => ({
    ...emptyProgress,
    drafts: { 'ex#1': { exerciseUid: 'ex', seed: 1, answers: { a: text }, at } },
  });
  expect(mergeProgress(draft('old', 1), draft('new', 2)).drafts['ex#1']?.answers).toEqual({ a: 'new' });
  expect(mergeProgress(draft('new', 2), draft('old', 1)).drafts['ex#1']?.answers).toEqual({ a: 'new' });
});
