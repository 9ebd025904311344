import type { SearchEntry } from './search-entry.ts';

/**
 * The entries that hold every word of the query, best first.
 *
 * A word of the query may be the beginning of a word of the entry, and from five letters on may differ from it
 * in one letter. A hit in the title weighs more than one in the further words, that more than one in the sentence.
 */
export function rankEntries(entries: readonly SearchEntry[], query: string, limit: number): SearchEntry[] {
  const wanted = wordsOf(query);
  if (wanted.length === 0) return [];
  return entries
    .map((entry) => ({ entry, score: scoreOf(entry, wanted) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score || a.entry.title.localeCompare(b.entry.title))
    .slice(0, limit)
    .map(({ entry }) => entry);
}

function scoreOf(entry: SearchEntry, wanted: readonly string[]): number {
  const fields = [
    { words: wordsOf(entry.title), weight: 8 },
    { words: wordsOf(entry.words), weight: 3 },
    { words: wordsOf(entry.text), weight: 1 },
  ];
  let total = 0;
  for (const word of wanted) {
    const best = Math.max(...fields.map(({ words, weight }) => weight * closeness(words, word)));
    if (best === 0) return 0;
    total += best;
  }
  return total;
}

/** 2 for the same word, 1 for its beginning, ½ for one letter's difference, 0 otherwise. */
function closeness(words: readonly string[], wanted: string): number {
  let best = 0;
  for (const word of words) {
    if (word === wanted) return 2;
    if (word.startsWith(wanted)) best = 1;
    else if (best === 0 && wanted.length >= 5 && differByOne(word.slice(0, wanted.length + 1), wanted))
      best = 0.5;
  }
  return best;
}

function differByOne(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  const restA = a.slice(i);
  const restB = b.slice(i);
  return restA.slice(1) === restB.slice(1) || restA.slice(1) === restB || restA === restB.slice(1);
}

function wordsOf(text: string): string[] {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}√°%]+/u)
    .filter((word) => word !== '');
}
