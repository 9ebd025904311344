import { z } from 'zod';

/** A caution shown where the work described can hurt someone: an entry of `content/cautions.yaml`. */
export const cautionSchema = z.strictObject({
  id: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  title: z.string().trim().min(1),
  text: z.string().trim().min(1),
});

export type Caution = z.infer<typeof cautionSchema>;
