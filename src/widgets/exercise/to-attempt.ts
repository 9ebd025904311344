import type { Outcome } from '../../course/grading/grade-answers.ts';
import type { Attempt } from '../../course/progress/progress-types.ts';
import { slipKey } from '../../course/worksheets/step-graph.ts';

/** A graded outcome as the learner's record keeps it. Slips are named only where one explanation stands alone. */
export function toAttempt(
  exerciseUid: string,
  seed: number,
  answers: Readonly<Record<string, string>>,
  outcome: Extract<Outcome, { kind: 'graded' }>,
  hintsUsed: number,
): Attempt {
  return {
    id: crypto.randomUUID(),
    exerciseUid,
    seed,
    at: Date.now(),
    earned: outcome.earned,
    possible: outcome.possible,
    hintsUsed,
    steps: outcome.steps.map((step) => {
      const [only, ...others] = step.diagnosis?.sets ?? [];
      return {
        stepId: step.stepId,
        given: answers[step.stepId] ?? '',
        earned: step.earned,
        possible: step.possible,
        carried: step.mark === 'carried',
        slips: only && others.length === 0 ? only.map(slipKey) : [],
      };
    }),
  };
}
