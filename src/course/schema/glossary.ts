import { z } from 'zod';

const text = z.string().trim().min(1);

/** An entry of `content/glossary.yaml`. */
export const glossaryEntrySchema = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
    /** A quantity has a unit (1 for a ratio); a term has none. */
    kind: z.enum(['quantity', 'term']),
    name: text,
    /** `plain` may be searched and read aloud as it stands; `subscript` is set below the line. */
    symbol: z.strictObject({ plain: text, subscript: text.optional() }).optional(),
    unit: text.optional(),
    meaning: text,
    /** Field names of the engine that hold this quantity, such as `currentA`. */
    also: z.array(z.string().regex(/^[a-z][A-Za-z0-9]*$/)),
    /** Ids of entries that help to understand this one. */
    see: z.array(text),
  })
  .refine((entry) => (entry.kind === 'quantity') === (entry.unit !== undefined), {
    path: ['unit'],
    error: 'a quantity has a unit (1 for a ratio), a term has none',
  });

export type GlossaryEntry = z.infer<typeof glossaryEntrySchema>;
