import { type NotReadyReason, parseAnswer } from '../answers/parse-answer.ts';
import { type Diagnosis, diagnose } from '../diagnosis/diagnose.ts';
import { quantityOf } from '../worksheets/quantity-of.ts';
import { createSolver, solveWorksheet, stepOf } from '../worksheets/step-graph.ts';
import type { StepValue, Values, Worksheet } from '../worksheets/worksheet.ts';
import { agrees } from './agrees.ts';
import { carriedFigures } from './carried-figures.ts';

/** `carried`: wrong in itself, right given the learner's own earlier figure; earns its mark. `revealed`: shown by a hint. */
export type Mark = 'right' | 'carried' | 'wrong' | 'revealed';

export interface StepResult {
  stepId: string;
  mark: Mark;
  earned: number;
  possible: number;
  given: StepValue;
  /** What this step should have been with the learner's own earlier figures; equals the key where none was carried. */
  fromOwn: StepValue | null;
  /** Present for a wrong step only. */
  diagnosis: Diagnosis | null;
}

export type Outcome =
  /** Something cannot be read yet. Costs no attempt, and says nothing about the other steps: that would leak the key. */
  | { kind: 'not-ready'; steps: Readonly<Record<string, { reason: NotReadyReason; found: string }>> }
  | { kind: 'graded'; earned: number; possible: number; steps: readonly StepResult[] };

export interface Sheet {
  asked: readonly string[];
  /** Steps worked before the learner's eyes: they stand at the key, so no slip in them can be the learner's. */
  shown: readonly string[];
  /** Asked steps whose value a hint has shown: they earn nothing and stand at the key. */
  revealed: readonly string[];
  /** What the learner entered, as typed, for each asked step. */
  answers: Readonly<Record<string, string>>;
}

/** Marks a set of answers step by step. A pure function of its arguments. */
export function gradeAnswers(worksheet: Worksheet, givens: Values, sheet: Sheet): Outcome {
  const { asked, shown, revealed, answers } = sheet;
  const unread: Record<string, { reason: NotReadyReason; found: string }> = {};
  const given: Record<string, StepValue> = {};
  for (const stepId of asked) {
    if (revealed.includes(stepId)) continue;
    const step = stepOf(worksheet, stepId);
    const parsed = parseAnswer(step, quantityOf(worksheet, stepId), givens, answers[stepId] ?? '');
    if (parsed.kind === 'ready') given[stepId] = parsed.value;
    else unread[stepId] = { reason: parsed.reason, found: parsed.found };
  }
  if (Object.keys(unread).length > 0) return { kind: 'not-ready', steps: unread };

  const key = solveWorksheet(worksheet, givens);
  const seen = Object.fromEntries(
    [...shown, ...revealed].map((stepId) => [stepId, key[stepId] as StepValue]),
  );
  const own = { ...seen, ...carriedFigures(worksheet, key, given) };
  /** Steps that stand at the key, shown or got right: no slip in one of them can be the learner's. */
  const settled = {
    ...seen,
    ...Object.fromEntries(
      Object.entries(given).filter(([stepId, value]) =>
        agrees(stepOf(worksheet, stepId), value, key[stepId] as StepValue),
      ),
    ),
  };
  const solver = createSolver(worksheet, givens, own);
  const steps = asked.map((stepId): StepResult => {
    const step = stepOf(worksheet, stepId);
    const keyValue = key[stepId] as StepValue;
    const answer = given[stepId];
    if (answer === undefined) {
      return {
        stepId,
        mark: 'revealed',
        earned: 0,
        possible: 1,
        given: keyValue,
        fromOwn: keyValue,
        diagnosis: null,
      };
    }
    const fromOwn = solver.solveStep(step, []);
    const mark = agrees(step, answer, keyValue)
      ? 'right'
      : fromOwn !== null && agrees(step, answer, fromOwn)
        ? 'carried'
        : 'wrong';
    const diagnosis =
      mark === 'wrong' ? diagnoseEitherWay(worksheet, givens, stepId, answer, own, settled) : null;
    return { stepId, mark, earned: mark === 'wrong' ? 0 : 1, possible: 1, given: answer, fromOwn, diagnosis };
  });
  return {
    kind: 'graded',
    earned: steps.reduce((total, step) => total + step.earned, 0),
    possible: steps.length,
    steps,
  };
}

/** From the learner's own figures first; when that explains nothing, from the key: earlier figures may have been mended. */
function diagnoseEitherWay(
  worksheet: Worksheet,
  givens: Values,
  stepId: string,
  answer: StepValue,
  own: Readonly<Record<string, StepValue>>,
  settled: Readonly<Record<string, StepValue>>,
): Diagnosis {
  const fromOwn = diagnose(worksheet, givens, stepId, answer, own);
  return fromOwn.sets.length > 0 ? fromOwn : diagnose(worksheet, givens, stepId, answer, settled);
}
