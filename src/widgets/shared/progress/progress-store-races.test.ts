import { forceCloseDatabase } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { attemptWith } from '../../../course/progress/progress-test-values.ts';
import { emptyProgress } from '../../../course/progress/progress-types.ts';
import { writeRow } from '../../../course/progress/stored-row.ts';
import { bareBrowser, failingAt, memoryStorage, stubIndexedDb } from './faulty-test-browser.ts';
import type { Layout } from './progress-database.ts';
import { createProgressStore } from './progress-store.ts';
import { setDamagedAside } from './unusable-rows.ts';

const attempt = attemptWith({});
const second = attemptWith({ id: 'a-2', at: 2_000 });
const quota = new DOMException('', 'QuotaExceededError');

beforeEach(() => void stubIndexedDb());
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

async function startedStore(...given: Parameters<typeof bareBrowser>) {
  const store = createProgressStore(bareBrowser(...given));
  await store.start();
  return store;
}

const ids = (store: Awaited<ReturnType<typeof startedStore>>) =>
  store.progress.value.attempts.map(({ id }) => id);

test('a copy by a newer version is left as it is and offered as a download', async () => {
  vi.stubGlobal('indexedDB', undefined);
  const text = JSON.stringify({ id: 'copy', version: 3, future: true });
  const storage = memoryStorage(new Map([['headroom.progress', text]]));
  const store = await startedStore({ localStorage: () => storage });
  await store.record(attempt);
  expect(store.saveState.value.copyKept).toBe(false);
  expect(storage.text.get('headroom.progress')).toBe(text);
  expect(store.keptAside.value).toMatchObject([{ reason: 'newer-version', raw: text }]);
});

test('a copy that another tab has made meanwhile is not cleared away', async () => {
  const storage = memoryStorage();
  const store = await startedStore({ localStorage: () => storage });
  const fault = failingAt(quota, () => true);
  await store.record(attempt);
  fault.stop();
  const others = JSON.stringify(writeRow('copy', { ...emptyProgress, attempts: [second] }));
  storage.text.set('headroom.progress', others);
  await store.retry();
  expect(store.saveState.value.state).toBe('saved');
  expect(storage.text.get('headroom.progress')).toBe(others);
  expect(ids(await startedStore({ localStorage: () => storage }))).toEqual(['a-1', 'a-2']);
});

test('the transaction, not the request it cut short, says why it aborted', async () => {
  const store = await startedStore();
  const put = IDBObjectStore.prototype.put;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...given) {
    const request = put.apply(this, given);
    Object.defineProperty(this.transaction, 'error', { get: () => quota, set: () => undefined });
    this.transaction.abort();
    return request;
  });
  await store.record(attempt);
  expect(store.saveState.value).toMatchObject({ state: 'not-saved', reason: 'quota' });
});

test('attempts that are stored already are not added again', async () => {
  const store = await startedStore();
  await store.record(attempt);
  const { text } = await store.exportFile();
  await store.importFile(text);
  expect(store.saveState.value).toMatchObject({ state: 'saved', reason: null });
});

test('beside rows of a newer version even a damaged one is left where it is', async () => {
  const store = await startedStore();
  await store.record(attempt);
  await store.record(second);
  const db = await openDB('headroom');
  await db.put('attempts', { id: 'a-1', version: 2, body: 'broken' });
  await db.put('attempts', { id: 'a-2', version: 3 });
  const next = await startedStore();
  expect(next.keptAside.value.map(({ reason }) => reason)).toEqual(['damaged', 'newer-version']);
  expect(await db.getAllKeys('attempts')).toEqual(['a-1', 'a-2']);
  db.close();
});

test('a row mended by another tab after it was read as damaged is not moved', async () => {
  await (await startedStore()).record(attempt);
  const db = await openDB<Layout>('headroom');
  const tx = db.transaction(['attempts', 'snapshot', 'quarantine'], 'readwrite');
  await tx.objectStore('attempts').put({ id: 'a-1', version: 2, body: 'newer damage', checksum: '' });
  await setDamagedAside(tx, [{ id: 'a-1', reason: 'damaged', raw: 'damage as it was read' }]);
  await tx.done;
  expect(await db.getAllKeys('attempts')).toEqual(['a-1']);
  expect(await db.count('quarantine')).toBe(0);
  db.close();
});

test('what was on the page goes back into a database that was cleared under it', async () => {
  const store = await startedStore();
  const connections = new Set<IDBDatabase>();
  const transaction = IDBDatabase.prototype.transaction;
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...given) {
    connections.add(this);
    return transaction.apply(this, given);
  });
  await store.record(attempt);
  for (const connection of connections) forceCloseDatabase(connection as never);
  await new Promise((resolve) => setTimeout(resolve, 20));
  stubIndexedDb();
  await store.record(second);
  expect(ids(await startedStore())).toEqual(['a-1', 'a-2']);
});

test('a write that fails inside the lock is not run a second time outside it', async () => {
  const request = (_name: string, _options: LockOptions, write: () => Promise<unknown>) => write();
  const store = await startedStore({ locks: () => ({ request }) as unknown as LockManager });
  let writes = 0;
  failingAt(quota, () => ++writes === 1);
  await store.record(attempt);
  expect(store.saveState.value).toMatchObject({ state: 'not-saved', reason: 'quota' });
});
