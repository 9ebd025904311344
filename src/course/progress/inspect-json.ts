import { forbiddenKeys, progressLimits } from './progress-limits.ts';

export type JsonFault = {
  readonly reason: 'forbidden-key' | 'too-deep' | 'too-many';
  readonly detail: string;
};

/**
 * Looks through parsed JSON of unknown origin before a schema sees it. Walks with its own stack: a file made of a
 * million brackets must not exhaust the call stack.
 *
 * @returns the first fault found, or null
 */
export function inspectJson(root: unknown): JsonFault | null {
  const waiting: { value: unknown; depth: number }[] = [{ value: root, depth: 0 }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value, depth } = next;
    if (typeof value !== 'object' || value === null) continue;
    if (depth >= progressLimits.fileDepth)
      return { reason: 'too-deep', detail: String(progressLimits.fileDepth) };
    const keys = Object.keys(value);
    if (keys.length > progressLimits.attempts) return { reason: 'too-many', detail: String(keys.length) };
    const isList = Array.isArray(value);
    for (const key of keys) {
      if (!isList && forbiddenKeys.has(key)) return { reason: 'forbidden-key', detail: key };
      waiting.push({ value: (value as Record<string, unknown>)[key], depth: depth + 1 });
    }
  }
  return null;
}
