import { z } from 'zod';

/** A unit of the course, in `content/lessons/units.yaml`. A unit without lessons is shown as planned. */
export const unitSchema = z.strictObject({
  number: z.number().int().min(1),
  /** Part of addresses, and with its number the name of the folder of its lessons. */
  slug: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  title: z.string().trim().min(1),
  summary: z.string().trim().min(1),
});

export type Unit = z.infer<typeof unitSchema>;
