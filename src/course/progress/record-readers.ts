import { draftKey } from './draft-key.ts';
import { forbiddenKeys, progressLimits } from './progress-limits.ts';
import type { Attempt, Draft, LessonMark, Settings, Snapshot } from './progress-types.ts';

// Hand-written because every page loads them: a reader takes unknown data and returns a clean copy holding the
// declared fields only, or throws a RangeError naming the field. Whoever calls it turns that into a reason code.

type Reader<T> = (value: unknown, field: string) => T;

/** A value that must pass a test. */
const only =
  <T>(test: (value: T) => boolean): Reader<T> =>
  (value, field) => {
    if (!test(value as T)) throw new RangeError(field);
    return value as T;
  };

const fieldsOf = only<object>(
  (value) => typeof value === 'object' && value !== null && !Array.isArray(value),
);
const finite = only<number>(Number.isFinite);
const whole = only<number>(Number.isSafeInteger);
const marks = only<number>((value) => Number.isFinite(value) && value >= 0);
const text = only<string>((value) => typeof value === 'string');
const typed: Reader<string> = (value, field) => text(value, field).slice(0, progressLimits.typed);

/** A usable id: 1 to 200 characters and no key that could reach a prototype. */
export const readId = only<string>(
  (value) =>
    typeof value === 'string' &&
    value !== '' &&
    value.length <= progressLimits.id &&
    !forbiddenKeys.has(value),
);

/** A list of at most `most` items. */
export const listOf =
  <T>(most: number, item: Reader<T>): Reader<T[]> =>
  (value, field) =>
    only<unknown[]>((list) => Array.isArray(list) && list.length <= most)(value, field).map((each) =>
      item(each, field),
    );

/** An object holding exactly the fields named, each read by its own reader. */
const shape =
  <T extends object>(readers: { readonly [Key in keyof T]: Reader<T[Key]> }): Reader<T> =>
  (value, field) => {
    const found = fieldsOf(value, field) as Record<string, unknown>;
    return Object.fromEntries(
      Object.entries<Reader<unknown>>(readers).map(([key, read]) => [key, read(found[key], key)]),
    ) as T;
  };

/** An object as a list of what it holds; the keys are made again from the values, so a wrong key cannot stay. */
const recordOf =
  <T>(most: number, item: Reader<T>, keyOf: (value: T) => string): Reader<Record<string, T>> =>
  (value, field) => {
    const items = listOf(most, item)(Object.values(fieldsOf(value, field)), field);
    return Object.fromEntries(items.map((each) => [keyOf(each), each]));
  };

const answers: Reader<Record<string, string>> = (value, field) => {
  const entry: Reader<[string, string]> = (pair) => {
    const [stepId, answer] = pair as [unknown, unknown];
    return [readId(stepId, field), typed(answer, field)];
  };
  return Object.fromEntries(
    listOf(progressLimits.answersPerDraft, entry)(Object.entries(fieldsOf(value, field)), field),
  );
};

export const readAttempt = shape<Attempt>({
  id: readId,
  exerciseUid: readId,
  seed: whole,
  at: finite,
  steps: listOf(
    progressLimits.stepsPerAttempt,
    shape<Attempt['steps'][number]>({
      stepId: readId,
      given: typed,
      earned: marks,
      possible: marks,
      carried: only<boolean>((value) => typeof value === 'boolean'),
      slips: listOf(progressLimits.slipsPerStep, readId),
    }),
  ),
  earned: marks,
  possible: marks,
  hintsUsed: marks,
});

export const readDraft = shape<Draft>({ exerciseUid: readId, seed: whole, answers, at: finite });

const readLessonMark = shape<LessonMark>({
  lessonUid: readId,
  canDo: listOf(progressLimits.canDoPerLesson, readId),
  visitedAt: finite,
  doneAt: only<number | null>((value) => value === null || Number.isFinite(value)),
});

export const readSettings = shape<Settings>({
  theme: only<Settings['theme']>((value) => ['auto', 'light', 'dark'].includes(value)),
});

export const readSnapshot = shape<Snapshot>({
  drafts: recordOf(progressLimits.drafts, readDraft, draftKey),
  lessons: recordOf(progressLimits.lessons, readLessonMark, (mark) => mark.lessonUid),
  settings: readSettings,
});
