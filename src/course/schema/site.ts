import { z } from 'zod';

const text = z.string().trim().min(1);

/** An invented site in `content/sites/<id>.yaml`: where exercises and examples take place. */
export const siteSchema = z.strictObject({
  id: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  name: text,
  /** What is there, in a word or two: cabin, boat, clinic. */
  kind: text,
  /** An invented place. */
  place: text,
  people: z.array(z.strictObject({ name: text, role: text })).min(1),
  summary: text,
  acV: z.literal([120, 230, 400]),
  hz: z.literal([50, 60]),
  notes: z.array(text),
});

export type Site = z.infer<typeof siteSchema>;
