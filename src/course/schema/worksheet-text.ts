import { z } from 'zod';

const words = z.string().trim().min(1);

const givenTextSchema = z.union([
  words,
  z.strictObject({
    label: words,
    /** Column heads for a list, by field. */
    fields: z.record(z.string(), words).optional(),
    /** Words for each option of a given that is a choice. */
    options: z.record(z.string(), words).optional(),
  }),
]);

const stepTextSchema = z.strictObject({
  /** What is asked, as a sentence. */
  prompt: words,
  /** A nudge that does not give the figure away. */
  hint: words,
  /** One or two sentences for the worked solution: why this line is what it is. */
  why: words,
  /** What each slip teaches, by slip id. */
  slips: z.record(z.string(), words),
  /** For choices and orders: the words of each option. */
  options: z.record(z.string(), words).optional(),
});

/** The words of one worksheet: content/strings/worksheets/<id>.en.yaml. `{name}` stands for a formatted value. */
export const worksheetTextSchema = z.strictObject({
  title: words,
  about: words,
  givens: z.record(z.string(), givenTextSchema),
  tables: z
    .record(z.string(), z.strictObject({ caption: words, columns: z.record(z.string(), words) }))
    .optional(),
  steps: z.record(z.string(), stepTextSchema),
});

export type WorksheetText = z.infer<typeof worksheetTextSchema>;
export type StepText = z.infer<typeof stepTextSchema>;
