import type { LessonMark } from './progress-types.ts';

/** Two marks of one lesson: ticks united, the later visit, the earlier completion. */
export function mergeMarks(a: LessonMark, b: LessonMark): LessonMark {
  return {
    lessonUid: a.lessonUid,
    canDo: [...new Set([...a.canDo, ...b.canDo])].sort(),
    visitedAt: Math.max(a.visitedAt, b.visitedAt),
    doneAt: a.doneAt === null || b.doneAt === null ? (a.doneAt ?? b.doneAt) : Math.min(a.doneAt, b.doneAt),
  };
}
