import type { VNode } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { Session } from '../../course/exercises/open-session.ts';
import type { AskedStep } from '../../course/exercises/public-view.ts';
import type { ExplainedStep } from '../../course/explanation/explain.ts';
import { symbolTree } from '../../course/explanation/math-tree.ts';
import type { StepResult } from '../../course/grading/grade-answers.ts';
import { MathView } from '../shared/MathView.tsx';
import { afterPress } from './after-press.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { MarkSign } from './MarkSign.tsx';
import { NumericField } from './NumericField.tsx';
import { OrderField } from './OrderField.tsx';
import { StepFeedback } from './StepFeedback.tsx';
import { WorkedStep } from './WorkedStep.tsx';
import { fill, reasonSentence, words } from './words.ts';

export interface AskedStepRowProps {
  step: AskedStep;
  text: string;
  session: Session | null;
  /** Set after a check that could not read this step. */
  unread: object | null;
  result: StepResult | null;
  hint: string | null;
  revealed: ExplainedStep | null;
  sources: Readonly<Record<string, string>>;
  onEnter(text: string): void;
}

/** One question of the sheet: prompt, field, what was understood, mark and feedback. */
export function AskedStepRow(props: AskedStepRowProps): VNode {
  const { step, text, session, unread, result, hint, revealed, sources, onEnter } = props;
  const id = useId();
  const [hasLeft, setHasLeft] = useState(false);
  const read = session && (text !== '' || unread) ? session.read(step.stepId, text) : null;
  // While a figure is being typed it is not yet unreadable; the reason is given on leaving the field or on checking.
  const reason = read?.kind === 'not-ready' && (unread || hasLeft) ? reasonSentence(step, read) : null;
  const state = result?.mark ?? (revealed ? 'revealed' : unread && reason ? 'not-ready' : undefined);
  const field = {
    id,
    text,
    isLocked: revealed !== null,
    isInvalid: reason !== null,
    describedBy: `${id}-mark ${id}-notes ${id}-feedback`,
    onEnter,
  };
  return (
    <li class="ws-step" data-state={state} data-step={step.stepId}>
      <p class="ws-prompt" id={`${id}-prompt`}>
        {step.prompt}
      </p>
      <MarkSign id={`${id}-mark`} mark={state ?? null} />
      {step.kind === 'numeric' && (
        <div class="ws-field" onFocusOut={() => afterPress(() => setHasLeft(true))}>
          <label for={id}>
            {step.symbol ? (
              <math>
                <mrow>
                  <MathView node={symbolTree(step.symbol)} />
                  <mo>=</mo>
                </mrow>
              </math>
            ) : (
              words.labels.answerFor
            )}
          </label>
          <NumericField {...field} labelledBy={`${id}-prompt`} />
          <Notes id={`${id}-notes`} step={step} echo={read?.kind === 'ready' ? read.echo : null} />
        </div>
      )}
      {step.kind === 'choice' && (
        <ChoiceField {...field} options={step.options} labelledBy={`${id}-prompt`} />
      )}
      {step.kind === 'ordering' && (
        <OrderField {...field} options={step.options} labelledBy={`${id}-prompt`} />
      )}
      <div id={`${id}-feedback`} class="ws-remarks" tabIndex={-1}>
        {reason !== null && <p class="ws-feedback">{reason}</p>}
        {hint !== null && !revealed && (
          <p class="ws-feedback ws-hint">{fill(words.feedback.hint, { hint })}</p>
        )}
        {revealed && (
          <div class="ws-feedback">
            <WorkedStep step={revealed} sources={sources} />
          </div>
        )}
        {result && session && <StepFeedback result={result} session={session} />}
      </div>
    </li>
  );
}

/** What to write, how close is right, and how the entry was understood. */
function Notes({ id, step, echo }: { id: string; step: AskedStep; echo: string | null }): VNode {
  const tolerance = step.tolerances.join(words.labels.or);
  return (
    <div id={id}>
      <span class="ws-tolerance">{fill(words.labels.within, { tolerance })}</span>{' '}
      <span class="ws-echo">
        {echo !== null && (
          <>
            {words.labels.readAs} <b>{echo}</b>
          </>
        )}
      </span>
    </div>
  );
}
