import { checksum } from './checksum.ts';
import { inspectJson } from './inspect-json.ts';
import { currentVersion } from './migrations.ts';
import { progressFileSchemas } from './progress-file-schema.ts';
import { progressLimits } from './progress-limits.ts';
import type { Progress } from './progress-types.ts';
import { readProgress } from './read-progress.ts';
import { progressFileKind } from './write-progress-file.ts';

export type FileFault =
  | 'too-large'
  | 'not-json'
  | 'forbidden-key'
  | 'too-deep'
  | 'too-many'
  | 'wrong-kind'
  | 'newer-version'
  | 'wrong-shape'
  | 'checksum';

export type FileReading =
  | {
      readonly kind: 'read';
      readonly progress: Progress;
      readonly version: number;
      readonly exportedAt: number;
    }
  | { readonly kind: 'refused'; readonly reason: FileFault; readonly detail: string };

const refused = (reason: FileFault, detail = ''): FileReading => ({ kind: 'refused', reason, detail });

/**
 * A progress file of any released version, from text of unknown origin, in today's shape. Never throws. The order of
 * the checks is the order of their cost, so a hostile file is dropped before anything expensive looks at it.
 */
export function parseProgressFile(text: string): FileReading {
  if (text.length > progressLimits.fileCharacters) return refused('too-large', String(text.length));
  let root: unknown;
  try {
    // Some editors put a byte order mark in front when a file is saved again.
    root = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (cause) {
    return refused('not-json', cause instanceof RangeError ? 'nesting' : '');
  }
  const fault = inspectJson(root);
  if (fault !== null) return refused(fault.reason, fault.detail);

  if (typeof root !== 'object' || root === null || !('kind' in root) || root.kind !== progressFileKind) {
    return refused('wrong-kind');
  }
  const version = 'version' in root ? root.version : undefined;
  if (typeof version === 'number' && Number.isSafeInteger(version) && version > currentVersion) {
    return refused('newer-version', String(version));
  }
  if (version !== 1 && version !== 2) return refused('wrong-shape', 'version');

  const reading = progressFileSchemas[version].safeParse(root);
  if (!reading.success) {
    const issue = reading.error.issues[0];
    return refused('wrong-shape', `${issue?.path.join('.') || 'file'} ${issue?.code ?? ''}`.trim());
  }
  const { exportedAt, checksum: noted } = reading.data;
  // The data as found: a schema's output may hold the same fields in another order.
  const { data } = root as { readonly data?: unknown };
  const found = checksum(JSON.stringify(data));
  if (found !== noted) return refused('checksum', `${noted} ${found}`);

  return { kind: 'read', version, exportedAt, progress: readProgress(version, data) };
}
