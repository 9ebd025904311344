import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';
import type { Attempt, Progress } from '../../../course/progress/progress-types.ts';
import { emptyProgress } from '../../../course/progress/progress-types.ts';
import { type ProgressAction, reduceProgress } from '../../../course/progress/reduce-progress.ts';
import { sortedAttempts } from '../../../course/progress/sorted-attempts.ts';
import {
  readAttemptRow,
  readSnapshotRow,
  type StoredRow,
  writeRow,
} from '../../../course/progress/stored-row.ts';
import { type KeptAside, saveReason, storageError } from './save-state.ts';
import { withPatience } from './with-patience.ts';

/** Version of the database's layout (its three stores), not of the records in it. */
const layoutVersion = 1;
const name = 'headroom';
/** Id of the snapshot's only row. */
export const current = 'current';
const stores = ['attempts', 'snapshot', 'quarantine'] as const;

export interface Layout extends DBSchema {
  attempts: { key: string; value: StoredRow };
  snapshot: { key: string; value: StoredRow };
  quarantine: { key: string; value: KeptAside };
}

export interface Loaded {
  readonly progress: Progress;
  readonly keptAside: readonly KeptAside[];
  /** A newer version has written here: read what can be read, write nothing. */
  readonly isNewer: boolean;
}

export type WriteTransaction = IDBPTransaction<Layout, typeof stores, 'readwrite'>;

/** Keeps a row's text; what was kept earlier under the same id stays, as ids carry a running number. */
export async function quarantine(tx: WriteTransaction, id: string, raw: string): Promise<void> {
  const kept = tx.objectStore('quarantine');
  await kept.put({ id: `${id}~${await kept.count()}`, reason: 'damaged', raw });
}

// Loaded only by the few who meet it. Without a network it fails, and the rows stay where they are until next time.
const rare = () => import('./unusable-rows.ts');

/** The device's database. Every method rejects with what went wrong; `saveReason` names it. */
export function progressDatabase(patienceMs: number, onLost: () => void) {
  let opening: Promise<IDBPDatabase<Layout>> | undefined;

  function connect(): Promise<IDBPDatabase<Layout>> {
    if (opening) return opening;
    const attempt = open();
    opening = attempt;
    // A failed opening is tried afresh at the next call; one that merely hangs is waited for again.
    attempt.catch(forget);
    return attempt;
  }

  // Async, so that a browser without `indexedDB` gives a rejection like any other.
  async function open(): Promise<IDBPDatabase<Layout>> {
    if (!globalThis.indexedDB) throw storageError('SecurityError');
    const db = await openDB<Layout>(name, layoutVersion, {
      upgrade: (fresh) => {
        for (const store of stores) fresh.createObjectStore(store, { keyPath: 'id' });
      },
      // A newer page wants to change the layout: let go, or it would hang.
      blocking: () => {
        db.close();
        forget();
      },
      terminated: () => {
        forget();
        onLost();
      },
    });
    return db;
  }

  function forget(): void {
    opening = undefined;
  }

  async function begin<Mode extends 'readonly' | 'readwrite'>(mode: Mode) {
    const start = async () => (await connect()).transaction(stores, mode, { durability: 'strict' });
    try {
      return await start();
    } catch (cause) {
      // A connection can die unnoticed, in a tab that slept for long; a fresh one is tried once.
      if (!(cause instanceof Error) || cause.name !== 'InvalidStateError') throw cause;
      forget();
      return start();
    }
  }

  /** One transaction over all stores, on the disk before it resolves. Aborts, changing nothing, if `work` throws. */
  async function transact<T>(work: (tx: WriteTransaction) => Promise<T>): Promise<T> {
    const tx = await begin('readwrite');
    try {
      const result = await work(tx);
      await tx.done;
      return result;
    } catch (cause) {
      const ended = tx.done.catch(() => undefined);
      try {
        tx.abort();
      } catch {
        // It has aborted by itself; the transaction knows the real reason, the request only "aborted".
      }
      await ended;
      throw tx.error ?? cause;
    }
  }

  async function read(): Promise<Loaded> {
    try {
      await connect();
    } catch (cause) {
      if (saveReason(cause) !== 'newer-version') throw cause;
      return {
        progress: emptyProgress,
        keptAside: await rare()
          .then(({ readUnknownLayout }) => readUnknownLayout(name))
          .catch(() => []),
        isNewer: true,
      };
    }
    const tx = await begin('readonly');
    const [rows, snapshotRow, aside] = await Promise.all([
      tx.objectStore('attempts').getAll(),
      tx.objectStore('snapshot').get(current),
      tx.objectStore('quarantine').getAll(),
      tx.done,
    ]);
    const attempts: Attempt[] = [];
    const newer: KeptAside[] = [];
    const damaged: KeptAside[] = [];
    const unusable = (id: string, kind: KeptAside['reason'], raw: string): void => {
      (kind === 'damaged' ? damaged : newer).push({ id, reason: kind, raw });
    };
    for (const row of rows) {
      const reading = readAttemptRow(row);
      if (reading.kind === 'read') attempts.push(reading.value);
      else unusable(row.id, reading.kind, reading.raw);
    }
    const reading = snapshotRow === undefined ? undefined : readSnapshotRow(snapshotRow);
    if (reading && reading.kind !== 'read') unusable(current, reading.kind, reading.raw);
    const snapshot = reading?.kind === 'read' ? reading.value : emptyProgress;
    // With a newer version's records present even the damaged ones stay where they are. If the move fails, they stay
    // too: what could be read is shown all the same, and the next load tries again.
    if (damaged.length > 0 && newer.length === 0) {
      await rare()
        .then(({ setDamagedAside }) => transact((tx) => setDamagedAside(tx, damaged)))
        .catch(() => undefined);
    }
    return {
      progress: { ...snapshot, attempts: sortedAttempts([], attempts) },
      keptAside: [...aside, ...damaged, ...newer],
      isNewer: newer.length > 0,
    };
  }

  /**
   * Applies actions to what is stored *now*, which another tab may have changed, and stores the result.
   * @param known  the record as last seen; its snapshot serves if the stored one has been damaged meanwhile
   */
  function write(actions: readonly ProgressAction[], known: Progress): Promise<Progress> {
    return transact(async (tx) => {
      const attempts = tx.objectStore('attempts');
      const snapshots = tx.objectStore('snapshot');
      const row = await snapshots.get(current);
      const reading = row === undefined ? undefined : readSnapshotRow(row);
      if (reading?.kind === 'newer-version') throw storageError('VersionError');
      if (reading?.kind === 'damaged') {
        // Damaged since the last reading. The next one would move it aside, but this change writes over it first.
        await quarantine(tx, current, reading.raw);
      }
      const stored = reading?.kind === 'read' ? reading.value : reading ? known : emptyProgress;
      // From an empty log, the reducer leaves exactly the attempts these actions bring.
      const next = actions.reduce(reduceProgress, { ...stored, attempts: [] });
      const isReset = actions.some(({ type }) => type === 'reset');
      if (isReset) for (const store of stores) await tx.objectStore(store).clear();
      for (const attempt of next.attempts) {
        if ((await attempts.getKey(attempt.id)) === undefined)
          await attempts.add(writeRow(attempt.id, attempt));
      }
      const { drafts, lessons, settings } = next;
      await snapshots.put(writeRow(current, { drafts, lessons, settings }));
      return { ...next, attempts: isReset ? next.attempts : sortedAttempts(known.attempts, next.attempts) };
    });
  }

  return {
    read: () => withPatience(read(), patienceMs),
    write: (actions: readonly ProgressAction[], known: Progress) =>
      withPatience(write(actions, known), patienceMs),
  };
}
