import { ownValue } from './own-value.ts';
import { passedExercises } from './passed-exercises.ts';
import type { Progress } from './progress-types.ts';

/** What a lesson asks for, by stable ids. */
export interface LessonOutline {
  readonly lessonUid: string;
  readonly exerciseUids: readonly string[];
  readonly canDoIds: readonly string[];
}

export interface LessonCompletion {
  readonly isVisited: boolean;
  /** Marked done by the learner, or everything passed and ticked. A visit alone completes nothing. */
  readonly isComplete: boolean;
  readonly exercisesPassed: number;
  readonly canDoTicked: number;
  /** Share of exercises and "I can" lines together [1], 0 … 1; a lesson with neither has 0 until marked done. */
  readonly doneRatio: number;
}

/** How far a learner is in one lesson. Ids that the lesson no longer has are ignored, not counted. */
export function lessonCompletion(progress: Progress, lesson: LessonOutline): LessonCompletion {
  const mark = ownValue(progress.lessons, lesson.lessonUid);
  const passed = passedExercises(progress);
  const exercisesPassed = lesson.exerciseUids.filter((uid) => passed.has(uid)).length;
  const canDoTicked = lesson.canDoIds.filter((id) => mark?.canDo.includes(id)).length;
  const asked = lesson.exerciseUids.length + lesson.canDoIds.length;
  const isMarked = mark !== undefined && mark.doneAt !== null;
  const doneRatio = asked === 0 ? Number(isMarked) : (exercisesPassed + canDoTicked) / asked;
  return {
    isVisited: mark !== undefined,
    isComplete: isMarked || (asked > 0 && doneRatio === 1),
    exercisesPassed,
    canDoTicked,
    doneRatio,
  };
}
