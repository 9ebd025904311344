import { type CollectionKey, getEntry } from 'astro:content';

/**
 * The entry a lesson names, or an error that tells its author what is wrong: a name that leads nowhere must never
 * reach a reader.
 */
export async function known<C extends CollectionKey>(collection: C, id: string, where: string) {
  const entry = await getEntry(collection as 'glossary', id);
  if (entry === undefined) throw unknownName(where, `an id of ${collection}`, id);
  return entry as unknown as import('astro:content').CollectionEntry<C>;
}

/** The error for a name in a lesson that does not exist. */
export function unknownName(where: string, expected: string, found: string): Error {
  return new Error(
    `\nplace:    ${where}\nexpected: ${expected}\nfound:    ${found}\nhint:     look for a misspelling, or add the entry.\n`,
  );
}
