import { draftKey } from './draft-key.ts';
import { mergeMarks } from './merge-marks.ts';
import { mergeProgress } from './merge-progress.ts';
import { ownValue } from './own-value.ts';
import {
  type Attempt,
  type Draft,
  emptyProgress,
  type LessonMark,
  type Progress,
  type Settings,
} from './progress-types.ts';
import { sortedAttempts } from './sorted-attempts.ts';

/**
 * What can happen to a record. Each action states its result, not a change ("ticked: true", never "toggle"), so that
 * applying one twice, or onto what another tab has saved meanwhile, gives what the learner saw.
 */
export type ProgressAction =
  | { readonly type: 'attempt-recorded'; readonly attempt: Attempt }
  | { readonly type: 'draft-saved'; readonly draft: Draft }
  | { readonly type: 'draft-cleared'; readonly exerciseUid: string; readonly seed: number }
  | { readonly type: 'lesson-visited'; readonly lessonUid: string; readonly at: number }
  | {
      readonly type: 'can-do-toggled';
      readonly lessonUid: string;
      readonly canDoId: string;
      readonly ticked: boolean;
      readonly at: number;
    }
  | { readonly type: 'lesson-done'; readonly lessonUid: string; readonly at: number }
  | { readonly type: 'settings-changed'; readonly settings: Settings }
  | { readonly type: 'merged'; readonly incoming: Progress }
  | { readonly type: 'reset' };

/** The record after an action. Pure: time arrives in the action. A clock that ran backwards loses nothing. */
export function reduceProgress(progress: Progress, action: ProgressAction): Progress {
  switch (action.type) {
    case 'attempt-recorded':
      return {
        ...progress,
        attempts: sortedAttempts(progress.attempts, [action.attempt]),
        drafts: withoutSubmitted(progress.drafts, action.attempt),
      };
    case 'draft-saved':
      return { ...progress, drafts: withDraft(progress.drafts, action.draft) };
    case 'draft-cleared':
      return { ...progress, drafts: without(progress.drafts, draftKey(action)) };
    case 'lesson-visited':
      return withMark(progress, action, {});
    case 'lesson-done':
      return withMark(progress, action, { doneAt: action.at });
    case 'can-do-toggled': {
      const ticked = withMark(progress, action, { canDo: [action.canDoId] });
      return action.ticked ? ticked : withoutTick(ticked, action.lessonUid, action.canDoId);
    }
    case 'settings-changed':
      return { ...progress, settings: action.settings };
    case 'merged':
      return mergeProgress(progress, action.incoming);
    case 'reset':
      return emptyProgress;
  }
}

type Drafts = Progress['drafts'];

function without(drafts: Drafts, key: string): Drafts {
  return Object.fromEntries(Object.entries(drafts).filter(([other]) => other !== key));
}

function withDraft(drafts: Drafts, draft: Draft): Drafts {
  const key = draftKey(draft);
  const earlier = ownValue(drafts, key);
  // The text typed last is the newest even if the clock has been set back, or an old export would win over it.
  const at = Math.max(draft.at, earlier === undefined ? draft.at : earlier.at + 1);
  return { ...drafts, [key]: { ...draft, at } };
}

/** Answers leave the draft only when the attempt carries the very same text: anything else is not yet submitted. */
function withoutSubmitted(drafts: Drafts, attempt: Attempt): Drafts {
  const key = draftKey(attempt);
  const draft = ownValue(drafts, key);
  if (draft === undefined) return drafts;
  const given = new Map(attempt.steps.map((step) => [step.stepId, step.given]));
  const left = Object.entries(draft.answers).filter(([stepId, text]) => given.get(stepId) !== text);
  if (left.length === 0) return without(drafts, key);
  return { ...drafts, [key]: { ...draft, answers: Object.fromEntries(left) } };
}

/** Merging keeps what is there: a second completion does not move the first, nor an earlier clock a later visit. */
function withMark(
  progress: Progress,
  { lessonUid, at }: { readonly lessonUid: string; readonly at: number },
  news: Partial<LessonMark>,
): Progress {
  const mark: LessonMark = { lessonUid, canDo: [], visitedAt: at, doneAt: null, ...news };
  const earlier = ownValue(progress.lessons, lessonUid);
  return { ...progress, lessons: { ...progress.lessons, [lessonUid]: mergeMarks(earlier ?? mark, mark) } };
}

function withoutTick(progress: Progress, lessonUid: string, canDoId: string): Progress {
  const mark = ownValue(progress.lessons, lessonUid);
  if (mark === undefined) return progress;
  const canDo = mark.canDo.filter((id) => id !== canDoId);
  return { ...progress, lessons: { ...progress.lessons, [lessonUid]: { ...mark, canDo } } };
}
