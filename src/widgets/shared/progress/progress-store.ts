/*
 * The learner's progress on this device.
 *
 * STORED: IndexedDB "headroom", three stores. Each row carries its value as text, with the version of its form and a
 * checksum (CRC-32 of id, version and body, one a line), so that damage is noticed and the damaged text can be kept.
 *
 *   attempts    one row per graded submission, only ever added
 *     { "id": "a-1", "version": 2, "checksum": "…", "body": "{\"id\":\"a-1\",\"exerciseUid\":\"ex-mill\",\"seed\":7,
 *       \"at\":1790000000000,\"steps\":[{\"stepId\":\"current\",\"given\":\"34,8 A\",\"earned\":1,\"possible\":1,
 *       \"carried\":false,\"slips\":[]}],\"earned\":1,\"possible\":1,\"hintsUsed\":0}" }
 *   snapshot    one row "current", rewritten at each change
 *     { "id": "current", "version": 2, "checksum": "…", "body": "{\"drafts\":{\"ex-mill#7\":{…}},
 *       \"lessons\":{\"le-heat\":{\"lessonUid\":\"le-heat\",\"canDo\":[\"tell-va-from-w\"],\"visitedAt\":…,
 *       \"doneAt\":null}},\"settings\":{\"theme\":\"auto\"}}" }
 *   quarantine  rows that could not be read, as found
 *     { "id": "current~0", "reason": "damaged", "raw": "…" }
 *
 * Everything is keyed by stable uid, never by position or title: reordering and renaming move no tick.
 *
 * LIFE OF A CHANGE
 *   1. The page calls start() after mount. Until the first reading is done, `progress` is empty and the state "loading".
 *   2. A change (record, saveDraft, markLesson …) shows in `progress` at once and joins the queue: "saving".
 *   3. Under one lock, in one strict transaction, the queued actions are applied to what is stored at that moment, not
 *      to what this tab believes is stored. So two tabs never undo each other, and a tick taken off stays off.
 *   4. Success: "saved", the queue is emptied, other tabs are told and read again, putting their own queue on top.
 *      Failure: "not-saved" with a reason; the queue stays and is tried again with the next change; meanwhile a copy of
 *      the whole record goes to localStorage ("headroom.progress", one row of the same form), and is merged back and
 *      removed once the database works. While only the copy works, a tick taken off in one of two tabs may return.
 *
 * WHAT A RETURNING LEARNER FINDS
 *   - A lesson or exercise was renamed or moved: nothing changes, its uid is the same.
 *   - An exercise was removed: its attempts stay in the log and in every export, and count for slips; no page shows
 *     them as an exercise any more.
 *   - An exercise changed so that old answers no longer fit: it must get a new uid. The new one starts unattempted; the
 *     old marks are kept but do not pass it.
 *   - An "I can" line was reworded under the same id: it stays ticked, though the learner ticked other words. Under a
 *     new id it is unticked, and the old tick is kept unseen.
 *   - The record is of version 1: attempt rows stay as they are and are read as version 2 with no carried marks and no
 *     hints, because nobody noted them then: "without hints" may flatter such an attempt. Marks and ticks are
 *     unchanged. The snapshot becomes version 2 with the first change; until then an older page can still read it.
 *   - The record is of a newer version (an old page from a cache): nothing is written to the database. What can be read
 *     is shown, the newer rows are offered as a download, new work goes into the copy, and the next newer page takes it.
 *   - A row is damaged: it moves to quarantine and is offered as a download. Damage to one attempt loses that attempt's
 *     marks. Damage to the snapshot loses drafts, ticks and completed lessons, but no attempt.
 *   - The clock was set back: attempts sort by the time they claim; scores, ticks and drafts do not depend on it.
 *   - The browser's site data was cleared: everything is gone but an exported file.
 */
import { type ReadonlySignal, signal } from '@preact/signals';
import type { FileFault, FileReading } from '../../../course/progress/parse-progress-file.ts';
import {
  type Attempt,
  type Draft,
  emptyProgress,
  type Progress,
  type Settings,
} from '../../../course/progress/progress-types.ts';
import { readAttempt, readDraft, readId, readSettings } from '../../../course/progress/record-readers.ts';
import { type ProgressAction, reduceProgress } from '../../../course/progress/reduce-progress.ts';
import { writeProgressFile } from '../../../course/progress/write-progress-file.ts';
import { copyKeys, type ProgressEnvironment } from './environment.ts';
import type { FallbackCopy } from './fallback-copy.ts';
import { otherTabs } from './other-tabs.ts';
import { progressDatabase } from './progress-database.ts';
import { type KeptAside, type SaveReason, type SaveState, saveReason, storageError } from './save-state.ts';

export type LessonChange =
  | { readonly kind: 'visited' }
  | { readonly kind: 'can-do'; readonly id: string; readonly ticked: boolean }
  | { readonly kind: 'done' };

export type ImportOutcome =
  | { readonly kind: 'imported'; readonly attemptsAdded: number; readonly version: number }
  /** Nothing was changed. 'unavailable': the importer itself could not be loaded, as without a network. */
  | { readonly kind: 'refused'; readonly reason: FileFault | 'unavailable'; readonly detail: string };

/** Promises resolve when the change is saved or known not to be (see `saveState`); none ever rejects. */
export interface ProgressStore {
  readonly progress: ReadonlySignal<Progress>;
  readonly saveState: ReadonlySignal<SaveState>;
  readonly keptAside: ReadonlySignal<readonly KeptAside[]>;
  start(): Promise<void>;
  record(attempt: Attempt): Promise<void>;
  saveDraft(draft: Draft): Promise<void>;
  clearDraft(draft: Pick<Draft, 'exerciseUid' | 'seed'>): Promise<void>;
  markLesson(lessonUid: string, change: LessonChange): Promise<void>;
  changeSettings(settings: Settings): Promise<void>;
  /** Tries again what is not saved yet. */
  retry(): Promise<void>;
  exportFile(): Promise<{ readonly fileName: string; readonly text: string }>;
  importFile(text: string): Promise<ImportOutcome>;
  /**
   * Deletes everything, what was kept aside included. Records of a newer version are not ours to delete. If the state
   * then is "not-saved", the database could not be reached and the old record may come back with the next visit.
   */
  reset(): Promise<void>;
}

export function createProgressStore(environment: ProgressEnvironment): ProgressStore {
  const progress = signal<Progress>(emptyProgress);
  const saveState = signal<SaveState>({ state: 'loading', reason: null, copyKept: false });
  const keptAside = signal<readonly KeptAside[]>([]);

  /** The record as last read from or written to the database; `progress` is this with `pending` on top. */
  let known: Progress = emptyProgress;
  let pending: ProgressAction[] = [];
  let isLoaded = false;
  let isNewer = false;
  let hasStarted = false;
  let copyAside: readonly KeptAside[] = [];

  const database = progressDatabase(environment.patienceMs, () => {
    // The data was cleared under an open page: what is on its screen is put back with the next change.
    pending.unshift({ type: 'merged', incoming: known });
    isLoaded = false;
  });
  // The copy in localStorage is loaded only when there is one to read or a failure to survive.
  let copy: FallbackCopy | undefined;
  async function openCopy(): Promise<FallbackCopy> {
    if (copy) return copy;
    const { fallbackCopy } = await import('./fallback-copy.ts');
    // Two callers may have waited for the module; there must be one copy, as it remembers what it has seen.
    if (!copy) {
      copy = fallbackCopy(environment.localStorage);
      const found = copy.read();
      copyAside = found.keptAside;
      keptAside.value = [...keptAside.value, ...copyAside];
      if (found.progress !== emptyProgress) {
        pending.unshift({ type: 'merged', incoming: found.progress });
        adopt(known);
      }
    }
    return copy;
  }
  const tabs = otherTabs(environment, () => {
    isLoaded = false;
    void synchronise();
  });

  function show(state: SaveState['state'], reason: SaveReason | null = null, copyKept = false): void {
    saveState.value = { state, reason, copyKept };
  }

  function adopt(stored: Progress): void {
    known = stored;
    progress.value = pending.reduce(reduceProgress, known);
  }

  function hasCopy(): boolean {
    try {
      const storage = environment.localStorage();
      return copyKeys.some((key) => (storage?.getItem(key) ?? null) !== null);
    } catch {
      return false;
    }
  }

  async function load(): Promise<void> {
    if (hasCopy()) await openCopy();
    const loaded = await database.read();
    isLoaded = true;
    isNewer = loaded.isNewer;
    keptAside.value = [...loaded.keptAside, ...copyAside];
    adopt(loaded.progress);
  }

  async function savePending(): Promise<void> {
    if (isNewer) throw storageError('VersionError');
    show('saving');
    const batch = pending.slice();
    const hadAttempts = known.attempts.length > 0;
    const stored = await tabs.alone(() => database.write(batch, known));
    pending = pending.filter((action) => !batch.includes(action));
    adopt(stored);
    copy?.clear();
    tabs.tell();
    if (!hadAttempts && stored.attempts.length > 0) askToPersist();
  }

  function askToPersist(): void {
    try {
      environment.persist()?.catch(() => undefined);
    } catch {
      // A browser that cannot promise it keeps the data as it keeps everything.
    }
  }

  async function synchroniseNow(): Promise<void> {
    try {
      if (!isLoaded) await load();
      while (pending.length > 0) await savePending();
      if (isNewer) throw storageError('VersionError');
      show('saved', keptAside.value.length > 0 ? 'damaged' : null);
    } catch (cause) {
      const reason = saveReason(cause);
      // Newer rows met while writing were written since the last reading: read again, to offer them as a download.
      if (reason === 'newer-version' && !isNewer) isLoaded = false;
      show('not-saved', reason);
      await openCopy().then(
        (opened) => show('not-saved', reason, opened.write(progress.value)),
        () => undefined,
      );
    }
  }

  // One synchronisation at a time; calls made before the next one starts share it, so typing cannot build up a queue.
  let running: Promise<void> = Promise.resolve();
  let waiting: Promise<void> | undefined;
  function synchronise(): Promise<void> {
    if (!hasStarted) {
      hasStarted = true;
      tabs.listen();
    }
    waiting ??= running.then(() => {
      waiting = undefined;
      running = synchroniseNow();
      return running;
    });
    return waiting;
  }

  /** `make` may throw on a value that could not be read back later; that value is not taken. */
  async function dispatch(make: () => ProgressAction): Promise<void> {
    try {
      const action = make();
      pending.push(action);
      progress.value = reduceProgress(progress.value, action);
    } catch {
      show('not-saved', 'unknown');
      return;
    }
    return synchronise();
  }

  async function importFile(text: string): Promise<ImportOutcome> {
    let reading: FileReading;
    try {
      // Loaded on demand: the schema library weighs more than everything else here.
      const { parseProgressFile } = await import('../../../course/progress/parse-progress-file.ts');
      reading = parseProgressFile(text);
    } catch {
      return { kind: 'refused', reason: 'unavailable', detail: '' };
    }
    if (reading.kind === 'refused') return reading;
    const { progress: incoming, version } = reading;
    await synchronise();
    const before = progress.value.attempts.length;
    const saved = dispatch(() => ({ type: 'merged', incoming }));
    const attemptsAdded = progress.value.attempts.length - before;
    await saved;
    return { kind: 'imported', attemptsAdded, version };
  }

  function lessonAction(lessonUid: string, change: LessonChange): ProgressAction {
    const lesson = { lessonUid: readId(lessonUid, 'lessonUid'), at: environment.now() };
    if (change.kind === 'visited') return { type: 'lesson-visited', ...lesson };
    if (change.kind === 'done') return { type: 'lesson-done', ...lesson };
    return { type: 'can-do-toggled', ...lesson, canDoId: readId(change.id, 'canDo'), ticked: change.ticked };
  }

  return {
    progress,
    saveState,
    keptAside,
    start: synchronise,
    retry: synchronise,
    record: (attempt) =>
      dispatch(() => ({ type: 'attempt-recorded', attempt: readAttempt(attempt, 'attempt') })),
    saveDraft: (draft) => dispatch(() => ({ type: 'draft-saved', draft: readDraft(draft, 'draft') })),
    clearDraft: ({ exerciseUid, seed }) => dispatch(() => ({ type: 'draft-cleared', exerciseUid, seed })),
    markLesson: (lessonUid, change) => dispatch(() => lessonAction(lessonUid, change)),
    changeSettings: (settings) =>
      dispatch(() => ({ type: 'settings-changed', settings: readSettings(settings, 'settings') })),
    importFile,
    async exportFile() {
      await synchronise();
      const now = environment.now();
      const day = new Date(now).toISOString().slice(0, 10);
      return { fileName: `headroom-progress-${day}.json`, text: writeProgressFile(progress.value, now) };
    },
    async reset() {
      if (copy ?? hasCopy())
        await openCopy().then(
          (opened) => opened.erase(),
          () => undefined,
        );
      copyAside = [];
      keptAside.value = keptAside.value.filter(({ reason }) => reason === 'newer-version');
      await dispatch(() => ({ type: 'reset' }));
    },
  };
}
