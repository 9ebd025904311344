import fc from 'fast-check';
import { openDB } from 'idb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { attemptWith } from '../../../course/progress/progress-test-values.ts';
import type { ProgressEnvironment } from './environment.ts';
import { bareBrowser, memoryStorage, stubIndexedDb } from './faulty-test-browser.ts';
import { createProgressStore } from './progress-store.ts';

const attempt = attemptWith({});
const second = attemptWith({ id: 'a-2', at: 2_000 });

beforeEach(() => void stubIndexedDb());
afterEach(() => void vi.unstubAllGlobals());

async function startedStore(fields: Partial<ProgressEnvironment> = {}) {
  const store = createProgressStore(bareBrowser(fields));
  await store.start();
  return store;
}

const ids = (store: Awaited<ReturnType<typeof startedStore>>) =>
  store.progress.value.attempts.map(({ id }) => id);

/** Puts a row into the database as damage or another version would leave it. */
async function tamper(store: 'attempts' | 'snapshot', id: string, change: object): Promise<void> {
  const db = await openDB('headroom');
  await db.put(store, { ...(await db.get(store, id)), id, ...change });
  db.close();
}

test('a damaged attempt is kept aside word for word, the rest goes on', async () => {
  const store = await startedStore();
  await store.record(attempt);
  await store.record(second);
  await tamper('attempts', 'a-1', { body: '{"id":"a-1", half' });
  const next = await startedStore();
  expect(ids(next)).toEqual(['a-2']);
  expect(next.saveState.value).toMatchObject({ state: 'saved', reason: 'damaged' });
  expect(next.keptAside.value).toMatchObject([{ reason: 'damaged', raw: expect.stringContaining('half') }]);
  const later = await startedStore();
  expect(later.keptAside.value).toMatchObject([{ id: 'a-1~0', raw: expect.stringContaining('half') }]);
});

test('a damaged snapshot costs no attempt and is kept through later writes', async () => {
  const store = await startedStore();
  await store.record(attempt);
  await tamper('snapshot', 'current', { checksum: '00000000' });
  const next = await startedStore();
  expect(ids(next)).toEqual(['a-1']);
  await next.markLesson('le-heat', { kind: 'done' });
  expect((await startedStore()).keptAside.value).toMatchObject([{ id: 'current~0', reason: 'damaged' }]);
});

test('a snapshot damaged under an open page is kept aside, and the page puts its own in its place', async () => {
  const store = await startedStore();
  await store.markLesson('le-heat', { kind: 'done' });
  await tamper('snapshot', 'current', { body: 'broken' });
  await store.record(attempt);
  const next = await startedStore();
  expect(next.progress.value.lessons['le-heat']?.doneAt).toBe(1_000);
  expect(next.keptAside.value).toMatchObject([{ raw: expect.stringContaining('broken') }]);
});

test.each(['attempts', 'snapshot'] as const)(
  '%s of a newer version stay untouched and can be downloaded',
  async (name) => {
    const id = name === 'attempts' ? 'a-1' : 'current';
    const open = await startedStore();
    await open.record(attempt);
    await tamper(name, id, { version: 3, body: 'of the future' });
    const storage = memoryStorage();
    const store = await startedStore({ localStorage: () => storage });
    await store.record(second);
    await store.reset();
    expect(store.saveState.value).toEqual({ state: 'not-saved', reason: 'newer-version', copyKept: true });
    expect(store.keptAside.value).toMatchObject([
      { reason: 'newer-version', raw: expect.stringContaining('of the future') },
    ]);
    const db = await openDB('headroom');
    expect(await db.get(name, id)).toMatchObject({ version: 3, body: 'of the future' });
    expect(await db.getAllKeys('attempts')).toEqual(['a-1']);
    db.close();
  },
);

test('a newer snapshot that appears under an open page is not overwritten', async () => {
  const store = await startedStore();
  await store.record(attempt);
  await tamper('snapshot', 'current', { version: 3 });
  await store.record(second);
  expect(store.saveState.value).toMatchObject({ state: 'not-saved', reason: 'newer-version' });
  const db = await openDB('headroom');
  expect(await db.get('snapshot', 'current')).toMatchObject({ version: 3 });
  db.close();
});

const isNewer = (version: unknown) => Number.isSafeInteger(version) && Number(version) > 2;

test('a row whose text is anything at all never stops the course', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.string(),
      fc.jsonValue().filter((value) => !isNewer(value)),
      async (body, version) => {
        stubIndexedDb();
        await (await startedStore()).record(attempt);
        await tamper('attempts', 'a-1', { body, version });
        const store = await startedStore();
        await store.record(second);
        expect(ids(store)).toEqual(['a-2']);
        expect(store.saveState.value.state).toBe('saved');
      },
    ),
    { numRuns: 25 },
  );
});
