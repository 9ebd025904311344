/** Why progress is not on the device as it should be; the sentences are in content/strings/progress.en.json. */
export type SaveReason = 'quota' | 'private-mode' | 'blocked' | 'unknown' | 'newer-version' | 'damaged';

export interface SaveState {
  readonly state: 'loading' | 'saved' | 'saving' | 'not-saved';
  /** Always set when not saved. With "saved" only 'damaged': something unreadable was found and kept aside. */
  readonly reason: SaveReason | null;
  /** When not saved: whether a full copy went into the browser's small storage instead. */
  readonly copyKept: boolean;
}

/** A record this version cannot use, kept as it was found so that it can be downloaded. */
export interface KeptAside {
  readonly id: string;
  readonly reason: 'damaged' | 'newer-version';
  readonly raw: string;
}

const reasonByErrorName: Readonly<Record<string, SaveReason>> = {
  QuotaExceededError: 'quota',
  // Storage switched off, a private window in some browsers, or a page in a sandboxed frame.
  SecurityError: 'private-mode',
  InvalidStateError: 'private-mode',
  TimeoutError: 'blocked',
  // A newer page has already changed the database's layout, or the rows in it.
  VersionError: 'newer-version',
};

/** The reason code for whatever a storage call threw. */
export function saveReason(cause: unknown): SaveReason {
  return (cause instanceof Error && reasonByErrorName[cause.name]) || 'unknown';
}

/** An error under one of the names a browser's own storage would use, for what the adapter notices itself. */
export const storageError = (name: 'SecurityError' | 'TimeoutError' | 'VersionError'): Error =>
  new DOMException('', name);
