import { openDB } from 'idb';
import { readAttemptRow, readSnapshotRow } from '../../../course/progress/stored-row.ts';
import { current, quarantine, type WriteTransaction } from './progress-database.ts';
import type { KeptAside } from './save-state.ts';

/** Moves damaged rows into quarantine, text and all. */
export async function setDamagedAside(tx: WriteTransaction, damaged: readonly KeptAside[]): Promise<void> {
  for (const { id, raw } of damaged) {
    const store = tx.objectStore(id === current ? 'snapshot' : 'attempts');
    const there = await store.get(id);
    const reading = id === current ? readSnapshotRow(there) : readAttemptRow(there);
    // Another tab may have dealt with it between the reading and this.
    if (reading.kind !== 'damaged' || reading.raw !== raw) continue;
    await quarantine(tx, id, raw);
    await store.delete(id);
  }
}

/** Everything in a database whose layout is newer than ours, as text, for the download. Changes nothing. */
export async function readUnknownLayout(database: string): Promise<KeptAside[]> {
  const db = await openDB(database);
  try {
    const kept: KeptAside[] = [];
    for (const store of db.objectStoreNames) {
      for (const row of await db.getAll(store)) {
        kept.push({ id: `${store}~${kept.length}`, reason: 'newer-version', raw: JSON.stringify(row) });
      }
    }
    return kept;
  } finally {
    db.close();
  }
}
