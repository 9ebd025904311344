import type { VNode } from 'preact';
import type { Session } from '../../course/exercises/open-session.ts';
import type { ExplainedStep } from '../../course/explanation/explain.ts';
import type { StepResult } from '../../course/grading/grade-answers.ts';
import { WorkedStep } from './WorkedStep.tsx';
import { fill, words } from './words.ts';

export interface WorkedSolutionProps {
  steps: readonly ExplainedStep[];
  results: ReadonlyMap<string, StepResult>;
  session: Session | null;
  sources: Readonly<Record<string, string>>;
  /** Id of the heading: the same solution can be on screen and on paper. */
  id: string;
}

/** Every step written out with this exercise's numbers, and the line where the learner's figures left it. */
export function WorkedSolution({ steps, results, session, sources, id }: WorkedSolutionProps): VNode {
  const departure = steps.find(({ stepId }) => results.get(stepId)?.mark === 'wrong')?.stepId;
  return (
    <section class="ws-solution" aria-labelledby={id}>
      <h2 id={id}>{words.solution.title}</h2>
      {session && <p class="ws-seed">{fill(words.solution.note, { seed: session.seed })}</p>}
      <ol class="ws-working">
        {steps.map((step) => {
          const given = results.get(step.stepId)?.given;
          const isDeparture = step.stepId === departure && given !== undefined;
          return (
            <li key={step.stepId} class={isDeparture ? 'ws-departed' : ''}>
              <p class="ws-working-prompt">{step.prompt}</p>
              <WorkedStep step={step} sources={sources} />
              {isDeparture && session && (
                <p class="ws-departure">
                  {fill(words.feedback.departs, { given: session.formatGiven(step.stepId, given) })}
                </p>
              )}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
