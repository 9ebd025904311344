import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anyAttempt, anyDraft, anyProgress, attemptWith } from './progress-test-values.ts';
import { emptyProgress } from './progress-types.ts';
import { type ProgressAction, reduceProgress } from './reduce-progress.ts';

const after = (...actions: ProgressAction[]) => actions.reduce(reduceProgress, emptyProgress);
const draft = (answers: Record<string, string>, at = 10, seed = 7) =>
  ({ type: 'draft-saved', draft: { exerciseUid: 'ex-mill', seed, answers, at } }) as const;
const tick = (ticked: boolean, at = 10) =>
  ({ type: 'can-do-toggled', lessonUid: 'le-heat', canDoId: 'tell-va-from-w', ticked, at }) as const;

test('recording an attempt twice keeps it once', () => {
  const record = { type: 'attempt-recorded', attempt: attemptWith({}) } as const;
  expect(after(record, record).attempts).toEqual([attemptWith({})]);
});

test('attempts sort by time, then id, whatever order they come in', () => {
  const ids = after(
    { type: 'attempt-recorded', attempt: attemptWith({ id: 'late', at: 2 }) },
    { type: 'attempt-recorded', attempt: attemptWith({ id: 'b', at: 1 }) },
    { type: 'attempt-recorded', attempt: attemptWith({ id: 'a', at: 1 }) },
  ).attempts.map(({ id }) => id);
  expect(ids).toEqual(['a', 'b', 'late']);
});

test('an attempt takes from the draft what it submitted, and nothing else', () => {
  const record = { type: 'attempt-recorded', attempt: attemptWith({}) } as const;
  expect(after(draft({ current: '34,8 A' }), record).drafts).toEqual({});
  expect(after(draft({ current: '34,8 A', minutes: '12' }), record).drafts['ex-mill#7']?.answers).toEqual({
    minutes: '12',
  });
  expect(after(draft({ current: '35 A' }), record).drafts['ex-mill#7']?.answers).toEqual({ current: '35 A' });
  expect(Object.keys(after(draft({ current: '34,8 A' }, 10, 8), record).drafts)).toEqual(['ex-mill#8']);
});

test('with the clock set back, the draft typed last is still the newest', () => {
  const kept = after(draft({ a: 'first' }, 5_000), draft({ a: 'second' }, 10)).drafts['ex-mill#7'];
  expect(kept).toMatchObject({ answers: { a: 'second' }, at: 5_001 });
});

test('a cleared draft is gone; others stay', () => {
  const cleared = after(draft({ a: '1' }), draft({ a: '2' }, 10, 8), {
    type: 'draft-cleared',
    exerciseUid: 'ex-mill',
    seed: 7,
  });
  expect(Object.keys(cleared.drafts)).toEqual(['ex-mill#8']);
});

test('a tick can be set and taken off, each any number of times', () => {
  expect(after(tick(true), tick(true)).lessons['le-heat']?.canDo).toEqual(['tell-va-from-w']);
  expect(after(tick(true), tick(false), tick(false)).lessons['le-heat']?.canDo).toEqual([]);
});

test('a lesson is done at the moment it was first done, and visited at the latest moment known', () => {
  const lesson = { lessonUid: 'le-heat' };
  const { lessons } = after(
    { type: 'lesson-visited', ...lesson, at: 50 },
    { type: 'lesson-done', ...lesson, at: 60 },
    { type: 'lesson-done', ...lesson, at: 70 },
    { type: 'lesson-visited', ...lesson, at: 10 },
  );
  expect(lessons['le-heat']).toEqual({ lessonUid: 'le-heat', canDo: [], visitedAt: 70, doneAt: 60 });
});

test('reset leaves nothing; settings change as told', () => {
  const dark = { type: 'settings-changed', settings: { theme: 'dark' } } as const;
  expect(after(dark).settings.theme).toBe('dark');
  expect(after(dark, tick(true), { type: 'reset' })).toEqual(emptyProgress);
});

test('applying any action twice is applying it once, but for the moment of a draft', () => {
  const anyAction: fc.Arbitrary<ProgressAction> = fc.oneof(
    anyAttempt.map((attempt) => ({ type: 'attempt-recorded', attempt }) as const),
    anyDraft.map(({ exerciseUid, seed }) => ({ type: 'draft-cleared', exerciseUid, seed }) as const),
    fc.record({
      type: fc.constantFrom('lesson-visited', 'lesson-done'),
      lessonUid: fc.constant('a'),
      at: fc.integer(),
    }),
    fc.boolean().map((ticked) => tick(ticked)),
    anyProgress.map((incoming) => ({ type: 'merged', incoming }) as const),
    fc.constant({ type: 'reset' } as const),
  );
  fc.assert(
    fc.property(anyProgress, anyAction, (progress, action) => {
      const once = reduceProgress(progress, action);
      expect(reduceProgress(once, action)).toEqual(once);
    }),
  );
});
