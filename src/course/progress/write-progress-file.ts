import { checksum } from './checksum.ts';
import { currentVersion } from './migrations.ts';
import type { Progress } from './progress-types.ts';

/** What a progress file calls itself. */
export const progressFileKind = 'headroom-progress';

/**
 * The whole record as the text of a file that the importer takes back. The checksum is of `data` as compact JSON, keys in
 * file order, so that a file saved again with other spacing still agrees.
 *
 * @param exportedAt  [ms since 1970]
 */
export function writeProgressFile(progress: Progress, exportedAt: number): string {
  const { attempts, drafts, lessons, settings } = progress;
  const data = { attempts, drafts, lessons, settings };
  const file = {
    kind: progressFileKind,
    version: currentVersion,
    exportedAt,
    data,
    checksum: checksum(JSON.stringify(data)),
  };
  return JSON.stringify(file, null, 1);
}
