import type { PlacedLesson } from '../course-order.ts';
import { unknownName } from './known.ts';

/**
 * What one lesson alone cannot know: its uid is its own, the lessons it builds on exist, and the explorers it
 * announces stand in its text. Exercises, cautions and sources are looked up where they are shown.
 */
export function checkLesson(lesson: PlacedLesson, all: readonly PlacedLesson[]): void {
  const { id, data, body = '' } = lesson.entry;
  const file = `content/lessons/${id}.mdx`;
  const twin = all.find(({ entry }) => entry.id !== id && entry.data.uid === data.uid);
  if (twin) throw unknownName(`${file}: uid`, `a uid used once (also in ${twin.entry.id})`, data.uid);
  for (const uid of data.prerequisites) {
    if (!all.some(({ entry }) => entry.data.uid === uid)) {
      throw unknownName(`${file}: prerequisites`, 'the uid of a lesson', uid);
    }
  }
  for (const explorer of data.explorers) {
    if (!body.includes(`<Explorer id="${explorer}"`)) {
      throw unknownName(`${file}: explorers`, `<Explorer id="${explorer}" /> in the text`, 'none');
    }
  }
}
