import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { ExerciseData } from '../../content-reader/read-exercises.ts';
import type { Session } from '../../course/exercises/open-session.ts';
import type { PublicView } from '../../course/exercises/public-view.ts';
import { FIRST_SEED, MAX_SEED, readSeed } from '../../course/exercises/read-seed.ts';
import type { ExplainedStep } from '../../course/explanation/explain.ts';
import type { Outcome } from '../../course/grading/grade-answers.ts';
import { earlyEntries } from './early-entries.ts';
import { toAttempt } from './to-attempt.ts';
import { useDraft } from './use-draft.ts';

type Answers = Readonly<Record<string, string>>;

/** What stands on the sheet besides the learner's entries. Starts anew with every set of numbers. */
interface Sheet {
  outcome: Outcome | null;
  hints: Readonly<Record<string, string>>;
  revealed: Readonly<Record<string, ExplainedStep>>;
  solution: readonly ExplainedStep[] | null;
  attempts: number;
  /** How often the learner asked for marks, attempts or not. */
  checks: number;
}

const blankSheet: Sheet = { outcome: null, hints: {}, revealed: {}, solution: null, attempts: 0, checks: 0 };

export type LoadState = 'loading' | 'ready' | 'failed';

/**
 * The life of an exercise on a page. The first render shows the server's numbers (the first seed) and needs no engine; the
 * worksheet, its words and the engine parts it uses are fetched after the page is drawn. Entries typed before that stay.
 */
export function useExercise(dataUrl: string, exerciseUid: string, firstView: PublicView) {
  const [loadState, setLoadState] = useState<LoadState>('loading');
  const [session, setSession] = useState<Session | null>(null);
  const [badSeed, setBadSeed] = useState<string | null>(null);
  const [answers, setAnswers] = useState<Answers>({});
  const [early] = useState(earlyEntries);
  const [sheet, setSheet] = useState<Sheet>(blankSheet);
  const source = useRef<ExerciseData | null>(null);
  /** The seed asked for last: answers of an earlier request that arrive late are dropped. */
  const wanted = useRef(firstView.seed);
  const drafts = useDraft(exerciseUid);

  const open = useCallback(
    async (seed: number) => {
      const isFirst = wanted.current === seed;
      wanted.current = seed;
      if (!isFirst) setAnswers({});
      // What was typed on an earlier visit comes when storage answers; nothing waits for it, and newer entries stand.
      void drafts.read(seed).then((kept) => {
        if (wanted.current === seed) setAnswers((typed) => ({ ...kept, ...typed }));
      });
      try {
        const [{ openSession }, data] = await Promise.all([
          import('../../course/exercises/open-session.ts'),
          source.current ?? fetchData(dataUrl),
        ]);
        source.current = data;
        const opened = await openSession(data, seed);
        if (wanted.current !== seed) return;
        setSession(opened);
        setSheet(blankSheet);
        setLoadState('ready');
      } catch {
        setLoadState('failed');
      }
    },
    [dataUrl, drafts],
  );

  useEffect(() => {
    const asked = new URL(location.href).searchParams.get('seed');
    const seed = readSeed(asked);
    setBadSeed(asked !== null && seed === null ? asked.slice(0, 40) : null);
    setAnswers(early);
    return whenIdle(() => void open(seed ?? FIRST_SEED));
  }, [open, early]);

  const view = session?.view ?? firstView;

  const actions = useMemo(
    () => ({
      enter(stepId: string, text: string): void {
        setAnswers((before) => {
          const after = { ...before, [stepId]: text };
          drafts.write(view.seed, without(after, Object.keys(sheet.revealed)));
          return after;
        });
        // A mark belongs to the entry it was given for.
        setSheet((before) => ({ ...before, outcome: withoutStep(before.outcome, stepId) }));
      },
      check(): void {
        if (!session) return;
        const outcome = session.grade(answers, Object.keys(sheet.revealed));
        const isGraded = outcome.kind === 'graded';
        setSheet({
          ...sheet,
          outcome,
          attempts: sheet.attempts + (isGraded ? 1 : 0),
          checks: sheet.checks + 1,
        });
        if (isGraded) {
          const hintsUsed = Object.keys(sheet.hints).length;
          drafts.recordAttempt(toAttempt(exerciseUid, view.seed, answers, outcome, hintsUsed));
        }
      },
      /** First the words, then the step itself: always for the first step that still lacks an entry or a mark. */
      hint(stepId: string): void {
        if (!session) return;
        if (stepId in sheet.hints) {
          const { step, answer } = session.reveal(stepId);
          const shown = { ...sheet.revealed, [stepId]: step };
          // A step that was shown is not kept with the learner's own entries: on the next visit it is open again.
          drafts.write(view.seed, without(answers, Object.keys(shown)));
          setAnswers({ ...answers, [stepId]: answer });
          setSheet({ ...sheet, revealed: shown, outcome: withoutStep(sheet.outcome, stepId) });
        } else {
          setSheet({ ...sheet, hints: { ...sheet.hints, [stepId]: session.hint(stepId) } });
        }
      },
      toggleSolution(): void {
        if (session) setSheet({ ...sheet, solution: sheet.solution ? null : session.solution() });
      },
      again(): void {
        const seed = anotherSeed(view.seed);
        const url = new URL(location.href);
        url.searchParams.set('seed', String(seed));
        history.pushState(null, '', url);
        setBadSeed(null);
        void open(seed);
      },
    }),
    [session, sheet, answers, view.seed, drafts, exerciseUid, open],
  );

  useEffect(() => {
    const onReturn = (): void => {
      void open(readSeed(new URL(location.href).searchParams.get('seed')) ?? FIRST_SEED);
    };
    addEventListener('popstate', onReturn);
    return () => removeEventListener('popstate', onReturn);
  }, [open]);

  return { loadState, session, view, badSeed, wantedSeed: wanted.current, answers, sheet, actions };
}

/** The page is drawn and can be typed into; marking may come a moment later. Safari has no idle callback. */
function whenIdle(call: () => void): () => void {
  if ('requestIdleCallback' in window) {
    const handle = requestIdleCallback(call, { timeout: 1500 });
    return () => cancelIdleCallback(handle);
  }
  const timer = setTimeout(call, 200);
  return () => clearTimeout(timer);
}

async function fetchData(url: string): Promise<ExerciseData> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`exercise data: expected an answer, found status ${response.status}`);
  return (await response.json()) as ExerciseData;
}

function anotherSeed(current: number): number {
  const [random = 0] = crypto.getRandomValues(new Uint32Array(1));
  const seed = 1 + (random % MAX_SEED);
  return seed === current ? (seed % MAX_SEED) + 1 : seed;
}

function without(answers: Answers, stepIds: readonly string[]): Answers {
  return Object.fromEntries(Object.entries(answers).filter(([stepId]) => !stepIds.includes(stepId)));
}

function withoutStep(outcome: Outcome | null, stepId: string): Outcome | null {
  if (outcome?.kind === 'graded') {
    return { ...outcome, steps: outcome.steps.filter((step) => step.stepId !== stepId) };
  }
  if (outcome?.kind === 'not-ready') {
    const { [stepId]: _, ...steps } = outcome.steps;
    return { ...outcome, steps };
  }
  return null;
}
