import {
  IDBCursor,
  IDBDatabase,
  IDBFactory,
  IDBIndex,
  IDBObjectStore,
  IDBRequest,
  IDBTransaction,
} from 'fake-indexeddb';
import { vi } from 'vitest';
import type { ProgressEnvironment } from './environment.ts';

/** The names that the idb package looks up as globals. `vi.unstubAllGlobals` takes them away again. */
export function stubIndexedDb(factory: Partial<IDBFactory> | undefined = new IDBFactory()): IDBFactory {
  const classes = { IDBCursor, IDBDatabase, IDBIndex, IDBObjectStore, IDBRequest, IDBTransaction };
  for (const [name, value] of Object.entries(classes)) vi.stubGlobal(name, value);
  vi.stubGlobal('indexedDB', factory);
  return factory as IDBFactory;
}

/** The factory with its transactions made to fail at the n-th put or add, each n in turn. */
export function failingAt(error: Error, shouldFail: () => boolean): { stop: () => void } {
  const spies = (['put', 'add'] as const).map((method) => {
    const original = IDBObjectStore.prototype[method];
    return vi.spyOn(IDBObjectStore.prototype, method).mockImplementation(function (
      this: IDBObjectStore,
      ...given
    ) {
      if (shouldFail()) throw error;
      return original.apply(this, given);
    });
  });
  return { stop: () => spies.forEach((spy) => void spy.mockRestore()) };
}

/** A localStorage in memory; `text` shows what is in it. */
export function memoryStorage(text = new Map<string, string>()) {
  return {
    text,
    getItem: (key: string) => text.get(key) ?? null,
    setItem: (key: string, value: string) => void text.set(key, value),
    removeItem: (key: string) => void text.delete(key),
  };
}

/** Tabs of one browser: what one posts, the others get, a moment later. */
export function tabChannels(): ProgressEnvironment['channel'] {
  type Port = NonNullable<ReturnType<ProgressEnvironment['channel']>>;
  const ports: Port[] = [];
  return () => {
    const port: Port = {
      onmessage: null,
      postMessage: (data) => {
        for (const other of ports) {
          if (other !== port)
            queueMicrotask(() => other.onmessage?.call(other as BroadcastChannel, { data } as MessageEvent));
        }
      },
      close: () => void ports.splice(ports.indexOf(port), 1),
    };
    ports.push(port);
    return port;
  };
}

/** A browser with nothing but a clock; each test adds what it is about. */
export function bareBrowser(fields: Partial<ProgressEnvironment> = {}): ProgressEnvironment {
  return {
    now: () => 1_000,
    localStorage: () => undefined,
    locks: () => undefined,
    channel: () => undefined,
    persist: () => undefined,
    patienceMs: 200,
    ...fields,
  };
}
