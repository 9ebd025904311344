import { z } from 'zod';

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const sentence = z.string().trim().min(1);

/** Front matter of a lesson in `content/lessons/<nn-unit>/<nn-slug>.mdx`. */
export const lessonSchema = z.strictObject({
  /** Keys a learner's progress: never changed and never used again for another lesson. */
  uid: z.string().regex(/^ls-[a-z0-9]+(-[a-z0-9]+)*$/),
  title: sentence,
  /** One sentence for the course map and for search. */
  summary: sentence,
  /** Reading time with the explorers, without the exercises [min]. */
  minutes: z.number().int().min(3).max(30),
  goals: z.array(sentence).min(2).max(5),
  /** What a reader might expect here and will find elsewhere. */
  outOfScope: z.array(sentence),
  /** Uids of lessons this one builds upon. */
  prerequisites: z.array(z.string().regex(/^ls-[a-z0-9-]+$/)),
  /** Slugs of the exercises placed in the text or at its end. */
  exercises: z.array(id).min(2).max(3),
  explorers: z.array(id).max(2),
  cautions: z.array(id),
  sources: z.array(id).min(1),
  /** "I can …": each sentence continues "I can". Ids key the learner's ticks and are never used again. */
  canDo: z
    .array(z.strictObject({ id, text: sentence }))
    .min(2)
    .max(6),
});

export type Lesson = z.infer<typeof lessonSchema>;
