import { parseArgs } from 'node:util';
import { openExercise } from '../content-reader/open-exercise.ts';
import { readExercises } from '../content-reader/read-exercises.ts';
import { FIRST_SEED, MAX_SEED, readSeed } from '../course/exercises/read-seed.ts';
import { keySheet } from './key-sheet.ts';
import { markSheet } from './mark-sheet.ts';

const usage = `Prints an exercise with its worked solution and answer key, or marks answers as the page would.

  npm run solve -- <exercise> [--seed 7] [--answers '{"apparentPowerVa":"1.6 kVA","currentA":"7 A"}']

  <exercise>   file name of an exercise without its ending; without one, all exercises are listed
  --seed       whole number from 1 to ${MAX_SEED}; ${FIRST_SEED} when absent
  --answers    JSON object: step id → answer as a learner would type it`;

/** @returns exit status: 0 when everything could be read, 1 otherwise */
export async function solve(argv: readonly string[], print: (line: string) => void): Promise<0 | 1> {
  try {
    const { positionals, values } = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        seed: { type: 'string' },
        answers: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    });
    const [slug] = positionals;
    if (values.help || slug === undefined) {
      print(usage);
      print('');
      for (const { slug: known, exercise } of readExercises())
        print(`  ${known.padEnd(34)} ${exercise.title}`);
      return values.help ? 0 : 1;
    }
    const seed = values.seed === undefined ? FIRST_SEED : readSeed(values.seed);
    if (seed === null) {
      throw new RangeError(`--seed: expected a whole number from 1 to ${MAX_SEED}, found "${values.seed}"`);
    }
    const { data, session } = await openExercise(slug, seed);
    const lines =
      values.answers === undefined
        ? keySheet(data, session)
        : markSheet(session, readAnswers(values.answers, session.asked));
    for (const line of lines) print(line);
    return 0;
  } catch (error) {
    print(error instanceof Error ? error.message : String(error));
    return 1;
  }
}

function readAnswers(text: string, asked: readonly string[]): Record<string, string> {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    parsed = null;
  }
  if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed)) {
    throw new RangeError(`--answers: expected a JSON object such as {"${asked[0]}":"12.5 A"}, found ${text}`);
  }
  const stranger = Object.keys(parsed).find((stepId) => !asked.includes(stepId));
  if (stranger !== undefined) {
    throw new RangeError(`--answers: expected step ids among ${asked.join(', ')}, found "${stranger}"`);
  }
  return Object.fromEntries(Object.entries(parsed).map(([stepId, answer]) => [stepId, String(answer)]));
}

if (import.meta.main) process.exitCode = await solve(process.argv.slice(2), (line) => console.log(line));
