/** One line of the search list, built with the site. Short keys, as every reader who searches downloads it. */
export interface SearchEntry {
  /** Kind: lesson or glossary entry. */
  readonly k: 'l' | 'g';
  readonly title: string;
  /** Address below the site's root, without a leading slash. */
  readonly url: string;
  /** One sentence shown under the title. */
  readonly text: string;
  /** Further words that lead here: headings, symbols, names of fields. */
  readonly words: string;
}
