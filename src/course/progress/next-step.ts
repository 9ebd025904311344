import { ownValue } from './own-value.ts';
import { passedExercises } from './passed-exercises.ts';
import type { Progress } from './progress-types.ts';

export interface CourseStep {
  readonly kind: 'lesson' | 'exercise';
  readonly uid: string;
}

/**
 * The first step of the course, in the order given, that is still open: a lesson not marked done, or an exercise not
 * passed. Something skipped is therefore offered again before anything later.
 *
 * @returns null when nothing is open
 */
export function nextStep(progress: Progress, course: readonly CourseStep[]): CourseStep | null {
  const passed = passedExercises(progress);
  const isOpen = ({ kind, uid }: CourseStep): boolean => {
    if (kind === 'exercise') return !passed.has(uid);
    return (ownValue(progress.lessons, uid)?.doneAt ?? null) === null;
  };
  return course.find(isOpen) ?? null;
}
