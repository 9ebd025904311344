/** Seeds a person can say aloud and type: 1 to 999 999. */
export const MAX_SEED = 999_999;

/** The seed every exercise shows first, and the one whose numbers the page carries without scripts. */
export const FIRST_SEED = 1;

/**
 * Reads a seed from an address. Null when it is absent or no whole number in range.
 *
 * Example: readSeed('7') → 7
 */
export function readSeed(text: string | null): number | null {
  if (text === null || !/^\d{1,6}$/.test(text)) return null;
  const seed = Number(text);
  return seed >= 1 && seed <= MAX_SEED ? seed : null;
}
