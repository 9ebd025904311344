import { openSession, type Session } from '../course/exercises/open-session.ts';
import { type ExerciseData, readExercise } from './read-exercises.ts';

/**
 * An exercise from content, opened for one seed. A fault in it names its file, so that an author knows where to look.
 *
 * @throws {Error} for an unknown slug, or when ranges, words and worksheet do not fit together
 */
export async function openExercise(
  slug: string,
  seed: number,
): Promise<{ data: ExerciseData; session: Session }> {
  const data = readExercise(slug);
  try {
    return { data, session: await openSession(data, seed) };
  } catch (fault) {
    if (!(fault instanceof RangeError)) throw fault;
    throw new Error(`${data.file}, worksheet ${data.exercise.worksheet}, seed ${seed}:\n  ${fault.message}`, {
      cause: fault,
    });
  }
}
