import type { InverterModel } from '../../engine/index.ts';
import { type NotReadyReason, parseAnswer } from '../answers/parse-answer.ts';
import { type ExplainedStep, explainStep, explainWorksheet } from '../explanation/explain.ts';
import { fillText } from '../explanation/fill-text.ts';
import { formatStepValue } from '../explanation/format-value.ts';
import { nameSlips } from '../explanation/name-slips.ts';
import { gradeAnswers, type Outcome, type StepResult } from '../grading/grade-answers.ts';
import type { Exercise } from '../schema/exercise.ts';
import type { WorksheetText } from '../schema/worksheet-text.ts';
import { quantityOf } from '../worksheets/quantity-of.ts';
import { loadWorksheet } from '../worksheets/registry.ts';
import { solveWorksheet, stepOf } from '../worksheets/step-graph.ts';
import type { StepValue } from '../worksheets/worksheet.ts';
import { answerText } from './answer-text.ts';
import { drawGivens } from './draw-givens.ts';
import { type PublicView, publicView, stepsInMode } from './public-view.ts';

/** How an entry is understood before it is marked. */
export type ReadBack =
  | { kind: 'ready'; echo: string }
  | { kind: 'not-ready'; reason: NotReadyReason; found: string };

/** An exercise with its numbers drawn: everything a page or a terminal can do with it. */
export interface Session {
  seed: number;
  view: PublicView;
  asked: readonly string[];
  read(stepId: string, text: string): ReadBack;
  grade(answers: Readonly<Record<string, string>>, revealed?: readonly string[]): Outcome;
  /** The sentences for a wrong step: each inner list is one possible explanation. */
  slipSentences(result: StepResult): string[][];
  hint(stepId: string): string;
  /** One step of the worked solution, and its answer as a learner would type it. */
  reveal(stepId: string): { step: ExplainedStep; answer: string };
  solution(): ExplainedStep[];
  formatGiven(stepId: string, value: StepValue): string;
}

interface SessionSource {
  exercise: Exercise;
  text: WorksheetText;
  inverters: Readonly<Record<string, InverterModel>>;
}

/**
 * Draws the numbers of a seed and opens the exercise for work.
 *
 * @throws {RangeError} when exercise, worksheet and words do not fit together; the content tests keep that from a learner
 */
export async function openSession(source: SessionSource, seed: number): Promise<Session> {
  const { exercise, text, inverters } = source;
  const worksheet = await loadWorksheet(exercise.worksheet);
  const givens = drawGivens(exercise, worksheet, seed, inverters);
  const key = solveWorksheet(worksheet, givens);
  const asked = stepsInMode(exercise, worksheet, 'asked');
  const shown = stepsInMode(exercise, worksheet, 'shown');
  const fill = (template: string): string => fillText(template, worksheet, text, key);
  const formatGiven = (stepId: string, value: StepValue): string =>
    formatStepValue(worksheet, text, stepId, value, fill);

  return {
    seed,
    asked,
    view: publicView(exercise, worksheet, text, givens, seed),
    read(stepId, entry) {
      const parsed = parseAnswer(stepOf(worksheet, stepId), quantityOf(worksheet, stepId), givens, entry);
      return parsed.kind === 'ready' ? { kind: 'ready', echo: formatGiven(stepId, parsed.value) } : parsed;
    },
    grade: (answers, revealed = []) => gradeAnswers(worksheet, givens, { asked, shown, revealed, answers }),
    slipSentences: ({ diagnosis }) => (diagnosis ? nameSlips(worksheet, text, key, diagnosis) : []),
    hint: (stepId) => fillText(text.steps[stepId]?.hint ?? '', worksheet, text, givens),
    reveal: (stepId) => ({
      step: explainStep(worksheet, text, key, stepId),
      answer: answerText(worksheet, stepId, key[stepId] as StepValue),
    }),
    solution: () => explainWorksheet(worksheet, text, givens),
    formatGiven,
  };
}
