import type { z } from 'zod';
import { describeIssues } from './describe-issues.ts';

/** Content through its schema. @throws {Error} naming file, field, what was expected, what was found, and a hint */
export function checkedData<T>(file: string, data: unknown, schema: z.ZodType<T>): T {
  const result = schema.safeParse(data);
  if (!result.success) throw new Error(`\n${describeIssues(file, data, result.error)}`);
  return result.data;
}
