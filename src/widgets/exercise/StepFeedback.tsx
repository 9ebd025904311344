import type { VNode } from 'preact';
import type { Session } from '../../course/exercises/open-session.ts';
import type { StepResult } from '../../course/grading/grade-answers.ts';
import { words } from './words.ts';

/** What the mark means: nothing to say about a right step; the slip named, or honestly not known, for a wrong one. */
export function StepFeedback({ result, session }: { result: StepResult; session: Session }): VNode | null {
  if (result.mark === 'right') return null;
  if (result.mark === 'carried') return <p class="ws-feedback">{words.feedback.carried}</p>;
  if (result.mark === 'revealed') return <p class="ws-feedback">{words.feedback.revealed}</p>;
  const explanations = session.slipSentences(result);
  if (explanations.length === 0) return <p class="ws-feedback">{words.feedback.unmatched}</p>;
  return (
    <div class="ws-feedback">
      {explanations.length > 1 && <p>{words.feedback.either}</p>}
      {explanations.map((sentences) => (
        <div key={sentences.join()}>
          {sentences.length > 1 && <p>{words.feedback.both}</p>}
          {sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      ))}
    </div>
  );
}
