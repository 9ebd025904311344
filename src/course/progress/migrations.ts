import { draftKey } from './draft-key.ts';

/**
 * Version of the records written now. 1: attempts knew neither `carried` nor `hintsUsed`; drafts and lessons were
 * lists. 2: the types of progress-types.ts.
 */
export const currentVersion = 2;

type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

// The migrations take unvalidated data and change only what they recognise; the readers judge the result.

/** An attempt of any known version in today's shape. What version 1 did not note is taken as "no". */
export function migrateAttempt(version: number, attempt: unknown): unknown {
  if (version > 1 || !isFields(attempt)) return attempt;
  const { steps } = attempt;
  return {
    ...attempt,
    hintsUsed: 0,
    steps: Array.isArray(steps)
      ? steps.map((step: unknown) => (isFields(step) ? { ...step, carried: false } : step))
      : steps,
  };
}

/** A snapshot of any known version in today's shape. */
export function migrateSnapshot(version: number, snapshot: unknown): unknown {
  if (version > 1 || !isFields(snapshot)) return snapshot;
  const { drafts, lessons, ...rest } = snapshot;
  return {
    ...rest,
    drafts: keyed(drafts, ({ exerciseUid, seed }) =>
      draftKey({ exerciseUid: String(exerciseUid), seed: Number(seed) }),
    ),
    lessons: keyed(lessons, ({ lessonUid }) => String(lessonUid)),
  };
}

/** A list as a record; of two entries with one key the later in the list stays, as version 1 appended changes. */
function keyed(list: unknown, key: (item: Fields) => string): unknown {
  if (!Array.isArray(list)) return list;
  return Object.fromEntries(
    list.map((item: unknown, index) => [isFields(item) ? key(item) : `unreadable ${index}`, item]),
  );
}
