import type { ComponentChildren, VNode } from 'preact';
import type { Outcome } from '../../course/grading/grade-answers.ts';
import type { LoadState } from './use-exercise.ts';
import { fill, words } from './words.ts';

export interface ActionsProps {
  loadState: LoadState;
  outcome: Outcome | null;
  attempts: number;
  seed: number;
  /** The seed asked for: other than `seed` only until its numbers are here, or when they could not be fetched. */
  wantedSeed: number;
  /** Null when no step is open; `isNext` when its hint is already read and the step itself comes next. */
  hintFor: { isNext: boolean } | null;
  hasSolution: boolean;
  harderUrl: string | null;
  printing: ComponentChildren;
  onHint(): void;
  onSolution(): void;
  onAgain(): void;
}

/** The foot of the sheet: check, hint, and what comes after. The status region stands before any text goes into it. */
export function Actions(props: ActionsProps): VNode {
  const { loadState, outcome, attempts, seed, wantedSeed, hintFor, hasSolution, harderUrl } = props;
  const isReady = loadState === 'ready';
  return (
    <div class="ws-foot">
      <p class="ws-score" role="status">
        {loadState === 'failed' && seed !== wantedSeed
          ? fill(words.labels.failedSeed, { seed, wantedSeed })
          : statusSentence(loadState, outcome)}
      </p>
      <div class="ws-actions no-print">
        <button type="submit" class="btn btn-primary" disabled={!isReady}>
          {attempts === 0 ? words.actions.check : words.actions.checkAgain}
        </button>
        <button type="button" class="btn" disabled={!isReady || !hintFor} onClick={props.onHint}>
          {hintFor?.isNext ? words.actions.reveal : words.actions.hint}
        </button>
        {attempts > 0 && (
          <button type="button" class="btn" aria-expanded={hasSolution} onClick={props.onSolution}>
            {hasSolution ? words.actions.hideSolution : words.actions.solution}
          </button>
        )}
        <button type="button" class="btn btn-quiet" disabled={!isReady} onClick={props.onAgain}>
          {words.actions.again}
        </button>
        {harderUrl && (
          <a class="btn btn-quiet" href={harderUrl}>
            {words.actions.harder}
          </a>
        )}
      </div>
      <p class="ws-seed">{fill(words.seed.label, { seed })}</p>
      <div class="ws-actions">{props.printing}</div>
    </div>
  );
}

function statusSentence(loadState: LoadState, outcome: Outcome | null): string {
  if (loadState === 'failed') return words.labels.failed;
  if (loadState === 'loading') return words.labels.loading;
  if (!outcome) return '';
  if (outcome.kind === 'not-ready') {
    const count = Object.keys(outcome.steps).length;
    if (count === 0) return '';
    return count === 1 ? words.feedback.notReadyOne : fill(words.feedback.notReady, { count });
  }
  // Since that check an entry was changed: the score on the sheet is no longer that of the entries.
  if (outcome.steps.length < outcome.possible) return '';
  const score = fill(words.feedback.score, { earned: outcome.earned, possible: outcome.possible });
  return outcome.earned === outcome.possible ? `${score}. ${words.feedback.full}` : score;
}
