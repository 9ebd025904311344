import { useEffect, useMemo } from 'preact/hooks';
import { draftKey } from '../../course/progress/draft-key.ts';
import type { Attempt } from '../../course/progress/progress-types.ts';
import { courseProgress } from '../shared/progress/course-progress.ts';

type Answers = Readonly<Record<string, string>>;

/** Long enough that a word is typed in one save, short enough that little is lost if the battery dies. */
const SAVE_AFTER_MS = 400;

/** The learner's entries for one exercise, kept on the device while they are typed. */
export interface Drafts {
  /** What was typed for these numbers before, if anything. */
  read(seed: number): Promise<Answers>;
  write(seed: number, answers: Answers): void;
  recordAttempt(attempt: Attempt): void;
}

export function useDraft(exerciseUid: string): Drafts {
  const { drafts, flush } = useMemo(() => createDrafts(exerciseUid), [exerciseUid]);
  useEffect(() => {
    // The last moment at which a page that is put away on a phone may still save.
    addEventListener('pagehide', flush);
    document.addEventListener('visibilitychange', flush);
    return () => {
      flush();
      removeEventListener('pagehide', flush);
      document.removeEventListener('visibilitychange', flush);
    };
  }, [flush]);
  return drafts;
}

function createDrafts(exerciseUid: string): { drafts: Drafts; flush: () => void } {
  let waiting: { seed: number; answers: Answers } | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const flush = (): void => {
    clearTimeout(timer);
    if (!waiting) return;
    void courseProgress.saveDraft({ exerciseUid, ...waiting, at: Date.now() });
    waiting = null;
  };

  return {
    flush,
    drafts: {
      async read(seed) {
        await courseProgress.start();
        return courseProgress.progress.value.drafts[draftKey({ exerciseUid, seed })]?.answers ?? {};
      },
      write(seed, answers) {
        waiting = { seed, answers };
        clearTimeout(timer);
        timer = setTimeout(flush, SAVE_AFTER_MS);
      },
      recordAttempt(attempt) {
        flush();
        void courseProgress.record(attempt);
        // With full marks there is nothing left to come back to; otherwise the entries wait for the next visit.
        if (attempt.earned === attempt.possible) {
          void courseProgress.clearDraft({ exerciseUid, seed: attempt.seed });
        }
      },
    },
  };
}
