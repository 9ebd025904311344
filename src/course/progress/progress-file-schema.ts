import * as z from 'zod';
import { draftKey } from './draft-key.ts';
import { forbiddenKeys, progressLimits } from './progress-limits.ts';
import { progressFileKind } from './write-progress-file.ts';

// zod is large: only parse-progress-file.ts imports this module, and that is loaded when a file is imported.
// Without jitless zod probes `new Function`, which the site's Content-Security-Policy reports as a violation.
z.config({ jitless: true });

const id = z
  .string()
  .min(1)
  .max(progressLimits.id)
  .refine((value) => !forbiddenKeys.has(value));
const typed = z.string().max(progressLimits.typed);
const marks = z.number().min(0);

const stepV1 = {
  stepId: id,
  given: typed,
  earned: marks,
  possible: marks,
  slips: z.array(id).max(progressLimits.slipsPerStep),
};
const attemptV1 = { id, exerciseUid: id, seed: z.int(), at: z.number(), earned: marks, possible: marks };

export const attemptSchema = z.strictObject({
  ...attemptV1,
  steps: z.array(z.strictObject({ ...stepV1, carried: z.boolean() })).max(progressLimits.stepsPerAttempt),
  hintsUsed: marks,
});

export const draftSchema = z.strictObject({
  exerciseUid: id,
  seed: z.int(),
  answers: z
    .record(id, typed)
    .refine((answers) => Object.keys(answers).length <= progressLimits.answersPerDraft),
  at: z.number(),
});

export const lessonMarkSchema = z.strictObject({
  lessonUid: id,
  canDo: z.array(id).max(progressLimits.canDoPerLesson),
  visitedAt: z.number(),
  doneAt: z.number().nullable(),
});

const settings = z.strictObject({ theme: z.enum(['auto', 'light', 'dark']) });

/** A record in which each value sits under its own key. */
const keyed = <T extends z.ZodType>(value: T, most: number, keyOf: (item: z.output<T>) => string) =>
  z.record(z.string(), value).refine((record) => {
    const entries = Object.entries(record as Record<string, z.output<T>>);
    return entries.length <= most && entries.every(([key, item]) => key === keyOf(item));
  });

const envelope = {
  kind: z.literal(progressFileKind),
  exportedAt: z.number(),
  checksum: z.string().length(8),
};

/** One schema for each version ever released; a released one never changes. */
export const progressFileSchemas = {
  1: z.strictObject({
    ...envelope,
    version: z.literal(1),
    data: z.strictObject({
      attempts: z
        .array(
          z.strictObject({
            ...attemptV1,
            steps: z.array(z.strictObject(stepV1)).max(progressLimits.stepsPerAttempt),
          }),
        )
        .max(progressLimits.attempts),
      drafts: z.array(draftSchema).max(progressLimits.drafts),
      lessons: z.array(lessonMarkSchema).max(progressLimits.lessons),
      settings,
    }),
  }),
  2: z.strictObject({
    ...envelope,
    version: z.literal(2),
    data: z.strictObject({
      attempts: z.array(attemptSchema).max(progressLimits.attempts),
      drafts: keyed(draftSchema, progressLimits.drafts, draftKey),
      lessons: keyed(lessonMarkSchema, progressLimits.lessons, (mark) => mark.lessonUid),
      settings,
    }),
  }),
};
