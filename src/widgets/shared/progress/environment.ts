/** Names in localStorage: the copy made when the database fails, and one that could not be read. */
export const copyKeys = ['headroom.progress', 'headroom.progress.aside'] as const;

/** What the store needs of its surroundings, so that each part can be missing or made to fail in a test. */
export interface ProgressEnvironment {
  readonly now: () => number;
  /** May throw: some browsers refuse even to hand the object out. */
  readonly localStorage: () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> | undefined;
  readonly locks: () => Pick<LockManager, 'request'> | undefined;
  readonly channel: (
    name: string,
  ) => Pick<BroadcastChannel, 'postMessage' | 'onmessage' | 'close'> | undefined;
  /** Asks the browser not to clear the data by itself. */
  readonly persist: () => Promise<unknown> | undefined;
  /** Longest wait for the database or for another tab's lock [ms]. */
  readonly patienceMs: number;
}

/** The browser's own. Nothing is touched before it is called, so that the module loads on a server too. */
export const browserEnvironment: ProgressEnvironment = {
  now: () => Date.now(),
  localStorage: () => globalThis.localStorage,
  locks: () => globalThis.navigator?.locks,
  channel: (name) => (typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name)),
  persist: () => globalThis.navigator?.storage?.persist?.(),
  // A phone waking up takes a second or two; past four a learner should be told.
  patienceMs: 4_000,
};
