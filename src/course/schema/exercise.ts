import { z } from 'zod';

const words = z.string().trim().min(1);
const slug = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'lower-case words joined by hyphens');

/** A number with its unit as a person writes it (`3 kVA`), or a bare number where there is no unit. */
const figure = z.union([z.string(), z.number()]);

/**
 * One given as an author writes it: fixed, drawn from a range in steps, or picked from a list. The worksheet decides
 * which names exist and which quantity each one is; that is checked when the exercise is joined to it.
 */
const drawnSchema = z.union([
  figure,
  z.strictObject({ from: figure, to: figure, step: figure }),
  z.strictObject({ pick: z.array(figure).min(1) }),
]);
const givenSchema = z.union([
  drawnSchema,
  z.array(z.record(z.string(), drawnSchema)).min(1),
  z.array(slug).min(1),
]);

export const exerciseSchema = z.strictObject({
  /** Never reused, keys the learner's record. The slug (file name) may change; this may not. */
  uid: z.string().regex(/^ex-[a-z0-9-]+$/, 'ex- and lower-case words joined by hyphens'),
  worksheet: slug,
  title: words,
  /** Id of an invented site in content/sites. */
  site: slug,
  minutes: z.number().int().min(1).max(30),
  level: z.literal([1, 2, 3]),
  /** What the learner can do afterwards, and what is left out on purpose. */
  objective: words,
  outOfScope: words,
  /** The situation, told in a few short sentences; `{name}` stands for a given. */
  story: words,
  given: z.record(z.string(), givenSchema),
  /** For every step of the worksheet: worked before the learner's eyes, asked, or left to the learner unasked. */
  steps: z.record(z.string(), z.enum(['shown', 'asked', 'hidden'])),
  cautions: z.array(slug),
  /** Slug of the next exercise up. */
  harder: slug.optional(),
});

export type Exercise = z.infer<typeof exerciseSchema>;
export type DrawnGiven = z.infer<typeof drawnSchema>;
