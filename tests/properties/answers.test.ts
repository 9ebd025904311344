import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readExercises } from '../../src/content-reader/read-exercises.ts';
import { openSession } from '../../src/course/exercises/open-session.ts';

/** Texts a learner, a paste or a mischief might leave in a field. */
const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 80 }),
  fc
    .tuple(fc.double({ noNaN: true }), fc.constantFrom(' A', ' VA', ' W', ' V', '', ' min', '%', ' s'))
    .map(([n, u]) => n + u),
  fc.constantFrom(
    '0 A',
    '1e308 A',
    '-5 A',
    '<b>5 A</b>',
    '__proto__',
    'constructor',
    'a>b>c',
    '>>>',
    '\u0000',
    '٣ A',
  ),
);

describe('any text in any field', () => {
  it.each(readExercises().map((data) => [data.slug, data] as const))(
    '%s: never throws, and never marks what it cannot read',
    async (_, data) => {
      const session = await openSession(data, 9);
      fc.assert(
        fc.property(
          fc.array(anyText, { minLength: session.asked.length, maxLength: session.asked.length }),
          (texts) => {
            const answers = Object.fromEntries(
              session.asked.map((stepId, place) => [stepId, texts[place] ?? '']),
            );
            const unreadable = session.asked.filter(
              (stepId) => session.read(stepId, answers[stepId] ?? '').kind !== 'ready',
            );
            const outcome = session.grade(answers);
            if (outcome.kind === 'not-ready') {
              expect(Object.keys(outcome.steps)).toEqual(unreadable);
              return;
            }
            expect(unreadable).toEqual([]);
            for (const step of outcome.steps) session.slipSentences(step);
            expect(JSON.stringify(outcome)).not.toMatch(/NaN|Infinity/);
          },
        ),
        { numRuns: 40 },
      );
    },
  );
});
