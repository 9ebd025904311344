const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * Rewrites look-alike characters so that the parser meets one form of each: plain spaces, "-" for every dash, "'" for every
 * apostrophe, ASCII digits, "^3" for a superscript exponent. Pure ASCII text, the usual case, is returned at once.
 *
 * @param text  what was typed, any string
 * @returns the same text in one form, trimmed
 * @throws nothing
 * Valid for: any string; unpaired surrogates pass through.
 * Source:   unicode-annex-15 (compatibility normalisation, NFKC)
 * Example:  normaliseText('−５ ℃') → '-5 °C'
 */
export function normaliseText(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the range is "all of ASCII", control characters included.
  if (/^[\x00-\x7f]*$/.test(text)) return text.trim();
  return (
    text
      // Before NFKC, which would turn 10³ into 103.
      .replace(/10([⁺⁻]?)([⁰¹²³⁴-⁹]+)/g, (_, sign: string, digits: string) => {
        const plainDigits = Array.from(digits, (digit) => superscripts.indexOf(digit)).join('');
        return `10^${sign === '⁻' ? '-' : ''}${plainDigits}`;
      })
      .normalize('NFKC')
      .replace(/[\u200b-\u200f\u2060\ufeff]/g, '')
      .replace(/[\u2010-\u2015\u2212]/g, '-')
      .replace(/[\u2018\u2019\u02bc\u00b4]/g, "'")
      .replace(/[\u2248\u223c\u2243]/g, '~')
      .replace(/\s/g, ' ')
      .trim()
  );
}
