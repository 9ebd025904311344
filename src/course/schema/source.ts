import { z } from 'zod';

const text = z.string().trim().min(1);

/** Where a number or a statement comes from: an entry of `content/sources.yaml`. */
export const sourceSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  citation: text,
  edition: text.optional(),
  /**
   * `read`: the work itself, or a published re-computation of its examples. `secondary`: quoted by another work.
   * `memory`: not seen while writing. `common-practice`: what the trade does, without a source. `derived`: calculated here.
   */
  howRead: z.enum(['read', 'secondary', 'memory', 'common-practice', 'derived']),
  note: text.optional(),
});

export type Source = z.infer<typeof sourceSchema>;
