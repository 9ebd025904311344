import type { Session } from '../course/exercises/open-session.ts';

/** A set of answers marked as the page would mark it, as lines of text. */
export function markSheet(session: Session, answers: Readonly<Record<string, string>>): string[] {
  const outcome = session.grade(answers);
  if (outcome.kind === 'not-ready') {
    return [
      'Not ready: nothing is marked until every asked step can be read.',
      ...Object.entries(outcome.steps).map(
        ([stepId, { reason, found }]) => `  ${stepId}: ${reason} "${found}"`,
      ),
    ];
  }
  return [
    `${outcome.earned} of ${outcome.possible} steps`,
    ...outcome.steps.flatMap((step) => {
      const line = `  ${step.stepId}: ${step.mark}   (${session.formatGiven(step.stepId, step.given)})`;
      if (step.mark !== 'wrong') return [line];
      const explanations = session.slipSentences(step);
      if (explanations.length === 0) return [line, '      no slip that we know leads to this figure'];
      return [line, ...explanations.map((sentences) => `      ${sentences.join(' / ')}`)];
    }),
  ];
}
