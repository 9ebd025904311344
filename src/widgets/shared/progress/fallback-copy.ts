import { mergeProgress } from '../../../course/progress/merge-progress.ts';
import { emptyProgress, type Progress } from '../../../course/progress/progress-types.ts';
import { readProgressRow, writeRow } from '../../../course/progress/stored-row.ts';
import { copyKeys, type ProgressEnvironment } from './environment.ts';
import type { KeptAside } from './save-state.ts';

const [copyKey, asideKey] = copyKeys;

export type FallbackCopy = ReturnType<typeof fallbackCopy>;

/**
 * The last resort when the database fails: the whole record as one row, of the
 * same form as the database's, in localStorage. No method throws.
 */
export function fallbackCopy(storage: ProgressEnvironment['localStorage']) {
  /** The text as this tab last saw it; anything else there now was written by another tab. */
  let lastSeen: string | null = null;
  /** Unreadable text found under the copy's key, to be moved aside before anything is written over it. */
  let unreadable: KeptAside | null = null;

  function read(): { progress: Progress; keptAside: readonly KeptAside[] } {
    try {
      const earlier = storage()?.getItem(asideKey) ?? null;
      lastSeen = storage()?.getItem(copyKey) ?? null;
      const copy = lastSeen === null ? null : readCopy(lastSeen);
      unreadable = copy?.aside ?? null;
      const keptAside: KeptAside[] =
        earlier === null ? [] : [{ id: asideKey, reason: 'damaged', raw: earlier }];
      if (unreadable) keptAside.push(unreadable);
      return { progress: copy?.progress ?? emptyProgress, keptAside };
    } catch {
      return { progress: emptyProgress, keptAside: [] };
    }
  }

  /** @returns whether the copy is safely there */
  function write(progress: Progress): boolean {
    try {
      const store = storage();
      if (!store) return false;
      const there = store.getItem(copyKey);
      let whole = progress;
      if (there !== null && there !== lastSeen) {
        const other = readCopy(there);
        unreadable = other.aside;
        whole = mergeProgress(progress, other.progress);
      }
      if (unreadable?.reason === 'newer-version') return false;
      if (unreadable) {
        const earlier = store.getItem(asideKey);
        store.setItem(asideKey, earlier === null ? unreadable.raw : `${earlier}\n${unreadable.raw}`);
        unreadable = null;
      }
      const text = JSON.stringify(writeRow('copy', whole));
      store.setItem(copyKey, text);
      lastSeen = text;
      return true;
    } catch {
      return false;
    }
  }

  /** Takes the copy away once the database holds it all; what another tab has put there since stays. */
  function clear(): void {
    try {
      const store = storage();
      if (lastSeen === null || unreadable || store?.getItem(copyKey) !== lastSeen) return;
      store.removeItem(copyKey);
      lastSeen = null;
    } catch {
      // It is merged again at the next load, which changes nothing.
    }
  }

  /** The learner asked for everything to go, so what was kept aside goes too. */
  function erase(): void {
    try {
      storage()?.removeItem(copyKey);
      storage()?.removeItem(asideKey);
      lastSeen = null;
      unreadable = null;
    } catch {
      // Nothing can be there if the storage cannot be reached.
    }
  }

  return { read, write, clear, erase };
}

interface Copy {
  readonly progress: Progress;
  /** The text, when it could not be used. */
  readonly aside: KeptAside | null;
}

function readCopy(text: string): Copy {
  let row: unknown;
  try {
    row = JSON.parse(text);
  } catch {
    // Not a row at all: read as damaged, like any other.
  }
  const reading = readProgressRow(row);
  if (reading.kind === 'read') return { progress: reading.value, aside: null };
  return { progress: emptyProgress, aside: { id: copyKey, reason: reading.kind, raw: text } };
}
