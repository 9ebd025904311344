import type { VNode } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { AskedStep, PublicView } from '../../course/exercises/public-view.ts';
import type { StepResult } from '../../course/grading/grade-answers.ts';
import { Actions } from './Actions.tsx';
import { AskedStepRow } from './AskedStepRow.tsx';
import { Givens } from './Givens.tsx';
import { PrintButtons } from './PrintButtons.tsx';
import { ShownStepRow } from './ShownStepRow.tsx';
import { useExercise } from './use-exercise.ts';
import { useTakeTo } from './use-take-to.ts';
import { WorkedSolution } from './WorkedSolution.tsx';
import { fill, words } from './words.ts';

export interface ExerciseProps {
  uid: string;
  /** Where ranges, words and inverters are fetched once the page is drawn. */
  dataUrl: string;
  /** The sheet for the first seed, as the server drew it. */
  view: PublicView;
  /** Titles of the sources that steps name, by id. */
  sources: Readonly<Record<string, string>>;
  harderUrl: string | null;
}

/** An exercise to work: givens, steps to fill in, marks in the margin, the worked solution. */
export function Exercise({ uid, dataUrl, view: firstView, sources, harderUrl }: ExerciseProps): VNode {
  const { loadState, session, view, badSeed, wantedSeed, answers, sheet, actions } = useExercise(
    dataUrl,
    uid,
    firstView,
  );
  const { outcome, hints, revealed, solution } = sheet;
  const results = new Map<string, StepResult>(
    outcome?.kind === 'graded' ? outcome.steps.map((step) => [step.stepId, step]) : [],
  );
  const form = useRef<HTMLFormElement>(null);
  const takeTo = useTakeTo(form, [hints, revealed, view.seed]);
  useEffect(() => {
    if (outcome?.kind !== 'not-ready') return;
    // Straight to the first entry that could not be read, with its reason beside it. Only on checking: while that entry is
    // mended the next one must not pull the focus away.
    const [first] = Object.keys(outcome.steps);
    form.current?.querySelector<HTMLElement>(`[data-step="${first}"] :is(input, button)`)?.focus();
  }, [sheet.checks]);
  const askedRows = view.steps.filter((step): step is AskedStep => step.mode === 'asked');
  const open = askedRows.find(
    ({ stepId }) =>
      !(stepId in revealed) && ((answers[stepId] ?? '') === '' || results.get(stepId)?.mark === 'wrong'),
  );

  return (
    <form
      ref={form}
      class="ws"
      novalidate
      onSubmit={(event) => {
        event.preventDefault();
        actions.check();
      }}
    >
      {badSeed !== null && (
        <p class="ws-feedback" role="alert">
          {fill(words.seed.bad, { found: badSeed, seed: view.seed })}
        </p>
      )}
      <p class="ws-story" tabIndex={-1}>
        {view.story}
      </p>
      <Givens givens={view.givens} />
      <h2>{words.labels.steps}</h2>
      <ol class="ws-steps">
        {view.steps.map((step) =>
          step.mode === 'shown' ? (
            <ShownStepRow key={step.stepId} step={step} sources={sources} />
          ) : (
            <AskedStepRow
              key={`${view.seed}/${step.stepId}`}
              step={step}
              text={answers[step.stepId] ?? ''}
              session={session}
              unread={outcome?.kind === 'not-ready' ? (outcome.steps[step.stepId] ?? null) : null}
              result={results.get(step.stepId) ?? null}
              hint={hints[step.stepId] ?? null}
              revealed={revealed[step.stepId] ?? null}
              sources={sources}
              onEnter={(text) => actions.enter(step.stepId, text)}
            />
          ),
        )}
      </ol>
      <Actions
        loadState={loadState}
        outcome={outcome}
        attempts={sheet.attempts}
        seed={view.seed}
        wantedSeed={wantedSeed}
        hintFor={open ? { isNext: open.stepId in hints } : null}
        hasSolution={solution !== null}
        harderUrl={harderUrl}
        printing={<PrintButtons session={session} sources={sources} />}
        onHint={() => {
          if (!open) return;
          takeTo(`[data-step="${open.stepId}"] .ws-remarks`);
          actions.hint(open.stepId);
        }}
        onSolution={actions.toggleSolution}
        onAgain={() => {
          takeTo('.ws-story');
          actions.again();
        }}
      />
      {solution && (
        <WorkedSolution
          steps={solution}
          results={results}
          session={session}
          sources={sources}
          id="worked-solution"
        />
      )}
    </form>
  );
}
