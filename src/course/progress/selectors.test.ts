import { expect, test } from 'vitest';
import { bestScoreRatio } from './best-score.ts';
import { lessonCompletion } from './lesson-completion.ts';
import { nextStep } from './next-step.ts';
import { passedExercises, passRatio } from './passed-exercises.ts';
import { attemptWith } from './progress-test-values.ts';
import { emptyProgress, type Progress } from './progress-types.ts';
import { slipTally } from './slip-tally.ts';

const withScores = (...scores: [uid: string, earned: number, possible: number][]): Progress => ({
  ...emptyProgress,
  attempts: scores.map(([exerciseUid, earned, possible], index) =>
    attemptWith({ id: `a${index}`, exerciseUid, earned, possible }),
  ),
});

test('the best score is the best share of the marks, null without an attempt or without marks', () => {
  expect(bestScoreRatio(withScores(['ex', 3, 4], ['ex', 1, 4], ['other', 4, 4]), 'ex')).toBe(0.75);
  expect(bestScoreRatio(withScores(['ex', 5, 4]), 'ex')).toBe(1);
  expect(bestScoreRatio(emptyProgress, 'ex')).toBeNull();
  expect(bestScoreRatio(withScores(['ex', 0, 0]), 'ex')).toBeNull();
});

test('passes exactly at four fifths and just above, not just below', () => {
  const passes = (earned: number, possible: number) =>
    passedExercises(withScores(['ex', earned, possible])).has('ex');
  expect(passRatio).toBe(0.8);
  expect(passes(4, 5)).toBe(true);
  expect(passes(0.1 + 0.7, 1)).toBe(true);
  expect(passes(4.001, 5)).toBe(true);
  expect(passes(3.999, 5)).toBe(false);
  expect(passes(0, 0)).toBe(false);
});

test('a later bad attempt does not take a pass away', () => {
  expect(passedExercises(withScores(['ex', 5, 5], ['ex', 0, 5]))).toEqual(new Set(['ex']));
});

const lesson = { lessonUid: 'le', exerciseUids: ['ex'], canDoIds: ['one', 'two'] };
const mark = { lessonUid: 'le', canDo: ['one', 'gone'], visitedAt: 1, doneAt: null };

test('a visit alone completes nothing', () => {
  const visited = { ...emptyProgress, lessons: { le: { ...mark, canDo: [] } } };
  expect(lessonCompletion(emptyProgress, lesson)).toMatchObject({
    isVisited: false,
    isComplete: false,
    doneRatio: 0,
  });
  expect(lessonCompletion(visited, lesson)).toMatchObject({
    isVisited: true,
    isComplete: false,
    doneRatio: 0,
  });
});

test('counts passed exercises and present ticks only, and is complete with all of them', () => {
  const half = { ...withScores(['ex', 5, 5]), lessons: { le: mark } };
  expect(lessonCompletion(half, lesson)).toMatchObject({
    exercisesPassed: 1,
    canDoTicked: 1,
    doneRatio: 2 / 3,
  });
  const all = { ...half, lessons: { le: { ...mark, canDo: ['one', 'two'] } } };
  expect(lessonCompletion(all, lesson)).toMatchObject({ isComplete: true, doneRatio: 1 });
});

test('a lesson without exercises or ticks is complete when marked done', () => {
  const bare = { ...lesson, exerciseUids: [], canDoIds: [] };
  expect(lessonCompletion({ ...emptyProgress, lessons: { le: mark } }, bare).isComplete).toBe(false);
  const done = { ...emptyProgress, lessons: { le: { ...mark, doneAt: 5 } } };
  expect(lessonCompletion(done, bare)).toMatchObject({ isComplete: true, doneRatio: 1 });
});

test('the next step is the first still open, null when none is', () => {
  const course = [
    { kind: 'lesson', uid: 'le' },
    { kind: 'exercise', uid: 'ex' },
    { kind: 'exercise', uid: 'toString' },
  ] as const;
  expect(nextStep(emptyProgress, course)).toEqual(course[0]);
  const done = { le: { ...mark, doneAt: 5 } };
  expect(nextStep({ ...withScores(['toString', 1, 1]), lessons: done }, course)).toEqual(course[1]);
  expect(nextStep({ ...withScores(['toString', 1, 1], ['ex', 1, 1]), lessons: done }, course)).toBeNull();
});

test('slips are counted once a step, most frequent first, with the latest moment', () => {
  const step = (...slips: string[]) => ({
    stepId: 's',
    given: '',
    earned: 0,
    possible: 1,
    carried: false,
    slips,
  });
  const attempts = [
    attemptWith({ id: 'a', at: 9, steps: [step('watts-for-va', 'watts-for-va'), step('ambient-ignored')] }),
    attemptWith({ id: 'b', at: 5, steps: [step('watts-for-va')] }),
  ];
  expect(slipTally({ attempts })).toEqual([
    { slip: 'watts-for-va', count: 2, lastAt: 9 },
    { slip: 'ambient-ignored', count: 1, lastAt: 9 },
  ]);
});
