import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { anyProgress, attemptWith } from '../../../course/progress/progress-test-values.ts';
import { writeProgressFile } from '../../../course/progress/write-progress-file.ts';
import type { ProgressEnvironment } from './environment.ts';
import { bareBrowser, failingAt, memoryStorage, stubIndexedDb } from './faulty-test-browser.ts';
import { createProgressStore } from './progress-store.ts';

const attempt = attemptWith({});
const second = attemptWith({ id: 'a-2', at: 2_000 });
const error = (name: string) => new DOMException('', name);

beforeEach(() => void stubIndexedDb());
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

async function startedStore(fields: Partial<ProgressEnvironment> = {}) {
  const store = createProgressStore(bareBrowser(fields));
  await store.start();
  return store;
}

const ids = (store: Awaited<ReturnType<typeof startedStore>>) =>
  store.progress.value.attempts.map(({ id }) => id);

const throwing = (name: string) => ({
  open: () => {
    throw error(name);
  },
});

test.each([
  ['there is no indexedDB', undefined, 'private-mode'],
  ['open() throws', throwing('SecurityError'), 'private-mode'],
  ['open() throws something unheard of', throwing('StrangeError'), 'unknown'],
  ['open() never answers', { open: () => new IDBRequest() }, 'blocked'],
])('keeps everything in memory and in the copy when %s', async (_what, factory, reason) => {
  vi.stubGlobal('indexedDB', factory);
  const storage = memoryStorage();
  const store = await startedStore({ localStorage: () => storage });
  await store.record(attempt);
  expect(store.saveState.value).toEqual({ state: 'not-saved', reason, copyKept: true });
  expect(ids(store)).toEqual(['a-1']);

  const next = await startedStore({ localStorage: () => storage });
  expect(ids(next)).toEqual(['a-1']);
  await next.record(second);

  // The database works again: the copy moves there and goes.
  stubIndexedDb();
  const healed = await startedStore({ localStorage: () => storage });
  expect(healed.saveState.value).toEqual({ state: 'saved', reason: null, copyKept: false });
  expect(storage.text.size).toBe(0);
  expect(ids(await startedStore())).toEqual(['a-1', 'a-2']);
});

test('says that there is no copy when localStorage is refused or full as well', async () => {
  vi.stubGlobal('indexedDB', undefined);
  const refused = await startedStore({
    localStorage: () => {
      throw error('SecurityError');
    },
  });
  await refused.record(attempt);
  expect(refused.saveState.value).toEqual({ state: 'not-saved', reason: 'private-mode', copyKept: false });
  const full = {
    ...memoryStorage(),
    setItem: () => {
      throw error('QuotaExceededError');
    },
  };
  const store = await startedStore({ localStorage: () => full });
  await store.record(attempt);
  expect(store.saveState.value.copyKept).toBe(false);
  expect(ids(store)).toEqual(['a-1']);
});

test('keeps both records when the database was away and is back within the session', async () => {
  await (await startedStore()).record(attempt);
  const working = globalThis.indexedDB;
  vi.stubGlobal('indexedDB', undefined);
  const store = await startedStore();
  await store.record(second);
  expect(ids(store)).toEqual(['a-2']);
  vi.stubGlobal('indexedDB', working);
  await store.retry();
  expect(ids(store)).toEqual(['a-1', 'a-2']);
  expect(store.saveState.value.state).toBe('saved');
  expect(ids(await startedStore())).toEqual(['a-1', 'a-2']);
});

test('a transaction that fails at any write changes nothing stored, and the next change saves both', async () => {
  for (let failing = 1; failing <= 2; failing++) {
    stubIndexedDb();
    const store = await startedStore();
    await store.saveDraft({ exerciseUid: 'ex-other', seed: 1, answers: { a: '1' }, at: 1 });
    let writes = 0;
    const fault = failingAt(error('QuotaExceededError'), () => ++writes === failing);
    await store.record(attempt);
    expect(store.saveState.value).toMatchObject({ state: 'not-saved', reason: 'quota' });
    fault.stop();
    const seen = (await startedStore()).progress.value;
    expect(seen.attempts).toEqual([]);
    expect(Object.keys(seen.drafts)).toEqual(['ex-other#1']);
    await store.record(second);
    expect(store.saveState.value).toMatchObject({ state: 'saved', reason: null });
    expect(ids(await startedStore())).toEqual(['a-1', 'a-2']);
  }
});

test('a transaction that aborts by itself is reported by the reason of the transaction', async () => {
  const store = await startedStore();
  const put = IDBObjectStore.prototype.put;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...given) {
    const request = put.apply(this, given);
    this.transaction.abort();
    return request;
  });
  await store.record(attempt);
  expect(store.saveState.value).toMatchObject({ state: 'not-saved', reason: 'unknown' });
  vi.restoreAllMocks();
  await store.retry();
  expect(ids(await startedStore())).toEqual(['a-1']);
});

test('a connection that died unnoticed is replaced', async () => {
  const store = await startedStore();
  const transaction = IDBDatabase.prototype.transaction;
  let calls = 0;
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...given) {
    if (++calls === 1) throw error('InvalidStateError');
    return transaction.apply(this, given);
  });
  await store.record(attempt);
  expect(store.saveState.value.state).toBe('saved');
});

test('an unreadable copy in localStorage is moved aside before another is written', async () => {
  vi.stubGlobal('indexedDB', undefined);
  const storage = memoryStorage(new Map([['headroom.progress', '{"cut off']]));
  const store = await startedStore({ localStorage: () => storage });
  await store.record(attempt);
  expect(store.keptAside.value).toMatchObject([{ reason: 'damaged', raw: '{"cut off' }]);
  expect(storage.text.get('headroom.progress.aside')).toBe('{"cut off');
  expect(ids(await startedStore({ localStorage: () => storage }))).toEqual(['a-1']);
});

test('two tabs without a database share one copy', async () => {
  vi.stubGlobal('indexedDB', undefined);
  const storage = memoryStorage();
  const one = await startedStore({ localStorage: () => storage });
  const two = await startedStore({ localStorage: () => storage });
  await one.record(attempt);
  await two.record(second);
  expect(ids(await startedStore({ localStorage: () => storage }))).toEqual(['a-1', 'a-2']);
});

test('no import, whatever its text, throws or takes anything away', async () => {
  const valid = anyProgress.map((progress) => writeProgressFile(progress, 5));
  const mutated = fc
    .tuple(valid, fc.nat(), fc.nat(20), fc.string({ maxLength: 8 }))
    .map(
      ([text, at, length, put]) =>
        text.slice(0, at % text.length) + put + text.slice((at % text.length) + length),
    );
  const store = await startedStore();
  await store.record(attempt);
  await store.saveDraft({ exerciseUid: 'ex-mill', seed: 9, answers: { current: '1' }, at: 2e12 });
  await store.markLesson('le-heat', { kind: 'done' });
  const outcomes = new Set<string>();
  await fc.assert(
    fc.asyncProperty(fc.oneof(fc.string({ unit: 'binary' }), mutated, valid), async (text) => {
      const before = store.progress.value;
      const outcome = await store.importFile(text);
      outcomes.add(outcome.kind === 'refused' ? outcome.reason : outcome.kind);
      const after = store.progress.value;
      if (outcome.kind === 'refused') expect(after).toEqual(before);
      expect(after.attempts).toEqual(expect.arrayContaining([...before.attempts]));
      expect(Object.keys(after.drafts)).toEqual(expect.arrayContaining(Object.keys(before.drafts)));
      expect(after.lessons['le-heat']?.doneAt).not.toBeNull();
      expect(store.saveState.value.state).toBe('saved');
    }),
    { numRuns: 150 },
  );
  expect(outcomes).toContain('imported');
  expect(outcomes).toContain('not-json');
  expect(outcomes).not.toContain('unavailable');
});
