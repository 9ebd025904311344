/** Puts values into a sentence of the strings file: `fill('{done} of {all}', { done: 1, all: 3 })`. */
export function fill(sentence: string, values: Readonly<Record<string, string | number>>): string {
  return sentence.replace(/\{(\w+)\}/g, (mark, name: string) => {
    const value = values[name];
    if (value === undefined)
      throw new RangeError(`strings: expected a value for ${mark}, found none in «${sentence}»`);
    return String(value);
  });
}
