import { openDB } from 'idb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { attemptWith } from '../../../course/progress/progress-test-values.ts';
import { bareBrowser, memoryStorage, stubIndexedDb, tabChannels } from './faulty-test-browser.ts';
import { createProgressStore } from './progress-store.ts';

const attempt = attemptWith({});
const draft = { exerciseUid: 'ex-mill', seed: 7, answers: { current: '34,8 A' }, at: 5 };
const canDo = (ticked: boolean) => ({ kind: 'can-do', id: 'tell-va-from-w', ticked }) as const;

beforeEach(() => void stubIndexedDb());
afterEach(() => void vi.unstubAllGlobals());

async function startedStore(...given: Parameters<typeof bareBrowser>) {
  const store = createProgressStore(bareBrowser(...given));
  await store.start();
  return store;
}

test('shows nothing and touches nothing before it is started', () => {
  vi.stubGlobal('indexedDB', undefined);
  const store = createProgressStore(bareBrowser());
  expect(store.saveState.value.state).toBe('loading');
  expect(store.progress.value.attempts).toEqual([]);
});

test('everything is there again in the next session', async () => {
  const first = await startedStore();
  await first.record(attempt);
  await first.saveDraft({ ...draft, seed: 8 });
  await first.markLesson('le-heat', { kind: 'visited' });
  await first.markLesson('le-heat', canDo(true));
  await first.markLesson('le-heat', { kind: 'done' });
  await first.changeSettings({ theme: 'dark' });
  expect(first.saveState.value).toEqual({ state: 'saved', reason: null, copyKept: false });

  const second = await startedStore();
  expect(second.progress.value).toEqual({
    attempts: [attempt],
    drafts: { 'ex-mill#8': { ...draft, seed: 8 } },
    lessons: {
      'le-heat': { lessonUid: 'le-heat', canDo: ['tell-va-from-w'], visitedAt: 1_000, doneAt: 1_000 },
    },
    settings: { theme: 'dark' },
  });
});

test('a change shows at once, and "saving" until it is stored', async () => {
  const store = await startedStore();
  const states: string[] = [];
  store.saveState.subscribe(({ state }) => void states.push(state));
  const saved = store.record(attempt);
  expect(store.progress.value.attempts).toEqual([attempt]);
  await saved;
  expect(states).toEqual(['saved', 'saving', 'saved']);
});

test('changes made while loading are put on top of what was stored', async () => {
  await (await startedStore()).record(attempt);
  const store = createProgressStore(bareBrowser());
  await store.record(attemptWith({ id: 'a-2', at: 2_000 }));
  expect(store.progress.value.attempts.map(({ id }) => id)).toEqual(['a-1', 'a-2']);
});

test('attempts are written with strict durability', async () => {
  const store = await startedStore();
  const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction');
  await store.record(attempt);
  expect(transaction).toHaveBeenCalledWith(expect.anything(), 'readwrite', { durability: 'strict' });
  transaction.mockRestore();
});

test('a value that could not be read back is not taken, and that is said', async () => {
  const store = await startedStore();
  await store.record({ ...attempt, earned: Number.NaN });
  expect(store.progress.value.attempts).toEqual([]);
  expect(store.saveState.value).toMatchObject({ state: 'not-saved', reason: 'unknown' });
});

test('two tabs see each other and neither undoes the other', async () => {
  const channel = tabChannels();
  const one = await startedStore({ channel });
  const two = await startedStore({ channel });
  await Promise.all([one.record(attempt), two.record(attemptWith({ id: 'a-2', at: 2_000 }))]);
  await one.markLesson('le-heat', canDo(true));
  await vi.waitFor(() => expect(two.progress.value.lessons['le-heat']?.canDo).toEqual(['tell-va-from-w']));
  await two.markLesson('le-heat', canDo(false));
  await vi.waitFor(() => expect(one.progress.value.lessons['le-heat']?.canDo).toEqual([]));
  expect(one.progress.value.attempts.map(({ id }) => id)).toEqual(['a-1', 'a-2']);
  expect(two.progress.value).toEqual(one.progress.value);
});

test('tabs that cannot speak to each other still never overwrite', async () => {
  const one = await startedStore();
  const two = await startedStore();
  await one.saveDraft(draft);
  await two.saveDraft({ ...draft, seed: 9 });
  await one.markLesson('le-heat', { kind: 'done' });
  expect(Object.keys((await startedStore()).progress.value.drafts)).toEqual(['ex-mill#7', 'ex-mill#9']);
});

test('one tab writes at a time, and a lock held for ever only delays', async () => {
  const request = vi.fn((_name: string, { signal }: LockOptions) => {
    return new Promise((_resolve, reject) => signal?.addEventListener('abort', () => reject(signal.reason)));
  });
  const store = await startedStore({ locks: () => ({ request }) as unknown as LockManager, patienceMs: 50 });
  await store.record(attempt);
  expect(request).toHaveBeenCalledOnce();
  expect(store.saveState.value.state).toBe('saved');
});

test('writes inside the lock', async () => {
  let isHeld = false;
  const request = async (_name: string, _options: LockOptions, write: () => Promise<unknown>) => {
    isHeld = true;
    const result = await write();
    isHeld = false;
    return result;
  };
  const store = await startedStore({ locks: () => ({ request }) as unknown as LockManager });
  const held: boolean[] = [];
  const put = IDBObjectStore.prototype.put;
  const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...given
  ) {
    held.push(isHeld);
    return put.apply(this, given);
  });
  await store.record(attempt);
  spy.mockRestore();
  expect(held).toEqual([true]);
});

test('asks the browser to keep the data once, after the first graded attempt', async () => {
  const persist = vi.fn(async () => true);
  const store = await startedStore({ persist });
  await store.saveDraft(draft);
  expect(persist).not.toHaveBeenCalled();
  await store.record(attempt);
  await store.record(attemptWith({ id: 'a-2' }));
  await (await startedStore({ persist })).record(attemptWith({ id: 'a-3' }));
  expect(persist).toHaveBeenCalledOnce();
});

test('a clock that runs backwards loses and reorders nothing that was earned', async () => {
  let now = 9_000;
  const store = await startedStore({ now: () => now });
  await store.markLesson('le-heat', { kind: 'done' });
  await store.saveDraft({ ...draft, at: now });
  now = 10;
  await store.markLesson('le-heat', { kind: 'visited' });
  await store.saveDraft({ ...draft, answers: { current: 'later' }, at: now });
  const { lessons, drafts } = (await startedStore()).progress.value;
  expect(lessons['le-heat']).toMatchObject({ visitedAt: 9_000, doneAt: 9_000 });
  expect(drafts['ex-mill#7']).toMatchObject({ answers: { current: 'later' }, at: 9_001 });
});

test('reset deletes everything here and in the other tab', async () => {
  const channel = tabChannels();
  const storage = memoryStorage(new Map([['headroom.progress.aside', 'broken']]));
  const one = await startedStore({ channel, localStorage: () => storage });
  const two = await startedStore({ channel });
  await one.record(attempt);
  await vi.waitFor(() => expect(two.progress.value.attempts.length).toBe(1));
  await one.reset();
  await vi.waitFor(() => expect(two.progress.value.attempts).toEqual([]));
  expect((await startedStore()).progress.value.attempts).toEqual([]);
  expect(storage.text.size).toBe(0);
  expect(one.keptAside.value).toEqual([]);
});

test('an exported file brings the record to another device, adding to what is there', async () => {
  const home = await startedStore();
  await home.record(attempt);
  const { fileName, text } = await home.exportFile();
  expect(fileName).toBe('headroom-progress-1970-01-01.json');

  stubIndexedDb();
  const away = await startedStore();
  await away.record(attemptWith({ id: 'a-2', at: 2_000 }));
  expect(await away.importFile(text)).toEqual({ kind: 'imported', attemptsAdded: 1, version: 2 });
  expect(await away.importFile(text)).toEqual({ kind: 'imported', attemptsAdded: 0, version: 2 });
  expect((await startedStore()).progress.value.attempts.map(({ id }) => id)).toEqual(['a-1', 'a-2']);
});

test('the database survives being taken over by a newer layout: nothing is written, all can be downloaded', async () => {
  const store = await startedStore();
  await store.record(attempt);
  const newer = await openDB('headroom', 2, {
    upgrade: (db) => void db.createObjectStore('reviews', { keyPath: 'id' }),
  });
  await newer.put('reviews', { id: 'r', due: 5 });
  newer.close();

  const storage = memoryStorage();
  const old = await startedStore({ localStorage: () => storage });
  await old.record(attemptWith({ id: 'a-2' }));
  expect(old.saveState.value).toEqual({ state: 'not-saved', reason: 'newer-version', copyKept: true });
  expect(old.keptAside.value.map(({ raw }) => raw)).toContain('{"id":"r","due":5}');
  const there = await openDB('headroom');
  expect(await there.getAllKeys('attempts')).toEqual(['a-1']);
  there.close();
});
