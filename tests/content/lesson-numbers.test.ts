import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { LessonNumber } from './lesson-numbers/lesson-number.ts';
import { unit1Numbers } from './lesson-numbers/unit-1.ts';
import { heatNumbers } from './lesson-numbers/unit-2-heat.ts';
import { limitNumbers } from './lesson-numbers/unit-2-limit.ts';

const NUMBER = /\[\[([\d.]+)\]\]/;
const plain = (text: string): string => text.replace(/\s+/g, ' ');

/** Half of the last digit printed, with room for the rounding of the machine. */
function within(printed: string, roundedTo: number | undefined): number {
  const decimals = printed.split('.')[1]?.length ?? 0;
  return ((roundedTo ?? 10 ** -decimals) / 2) * (1 + 1e-9);
}

/** What is wrong with a sentence, for its author; nothing when it holds. */
function fault({ file, says, is, roundedTo }: LessonNumber): string | null {
  const printed = NUMBER.exec(says)?.[1];
  const sentence = plain(says.replace(NUMBER, '$1'));
  if (!plain(readFileSync(file, 'utf8')).includes(sentence))
    return `${file}: expected the words "${sentence}", found them no more. Hold the new words, or put the old ones back.`;
  const value = is();
  if (printed === undefined) return value === true ? null : `${file}: "${sentence}" is no longer true.`;
  if (typeof value !== 'number')
    return `${file}: "${sentence}": expected a number from the engine, found ${value}.`;
  if (Math.abs(value - Number(printed)) <= within(printed, roundedTo)) return null;
  return `${file}: "${sentence}" prints ${printed}; the engine gives ${value}.`;
}

describe('what the lessons say', () => {
  const all = [...unit1Numbers, ...heatNumbers, ...limitNumbers];
  it.each(all.map((one) => [one.file.replace(/^.*\//, ''), one.says, one] as const))(
    '%s: %s',
    (_, __, one) => {
      const wrong = fault(one);
      if (wrong !== null) throw new Error(wrong);
    },
  );

  it('notices a number that the engine does not give, and words that are gone', () => {
    const file = 'content/lessons/02-overload-levels/03-minutes-and-heat.mdx';
    expect(fault({ file, says: '| 3600 VA | [[30]] min |', is: () => 30.6 })).toMatch(
      /prints 30; the engine gives 30.6/,
    );
    expect(fault({ file, says: '| 3600 VA | [[31]] min |', is: () => 31 })).toMatch(/found them no more/);
    expect(fault({ file, says: '| 2900 VA | for ever |', is: () => false })).toMatch(/no longer true/);
  });
});
