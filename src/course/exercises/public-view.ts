import { formatQuantity, unitsOf } from '../../engine/index.ts';
import { optionsOf } from '../answers/parse-answer.ts';
import { type ExplainedStep, explainStep } from '../explanation/explain.ts';
import { fillText } from '../explanation/fill-text.ts';
import { formatFigure, optionText } from '../explanation/format-value.ts';
import type { Exercise } from '../schema/exercise.ts';
import type { WorksheetText } from '../schema/worksheet-text.ts';
import { quantityOf } from '../worksheets/quantity-of.ts';
import { solveWorksheet, stepOf } from '../worksheets/step-graph.ts';
import type { Quantity, Tolerance, Values, Worksheet } from '../worksheets/worksheet.ts';
import { type GivenRows, givenRows } from './given-rows.ts';

export interface AskedStep {
  mode: 'asked';
  stepId: string;
  kind: 'numeric' | 'choice' | 'ordering';
  prompt: string;
  /** For a numeric step: its symbol, the units that may be typed, and how close is right, in words. */
  symbol: string | null;
  units: readonly string[];
  tolerances: readonly string[];
  options: readonly { id: string; text: string }[];
}

export interface ShownStep extends ExplainedStep {
  mode: 'shown';
}

/**
 * What a learner may see of an exercise before answering: the story, the givens, the questions and the steps worked for
 * them. It carries no key: values of asked and hidden steps are not in it.
 */
export interface PublicView {
  seed: number;
  story: string;
  givens: GivenRows;
  steps: readonly (AskedStep | ShownStep)[];
}

export function publicView(
  exercise: Pick<Exercise, 'story' | 'steps'>,
  worksheet: Worksheet,
  text: WorksheetText,
  givens: Values,
  seed: number,
): PublicView {
  const key = solveWorksheet(worksheet, givens);
  const fill = (template: string): string => fillText(template, worksheet, text, givens);
  const asked = (stepId: string): AskedStep => {
    const step = stepOf(worksheet, stepId);
    const quantity = quantityOf(worksheet, stepId);
    const words = text.steps[stepId];
    if (!words) throw new RangeError(`steps.${stepId}: expected words for this step, found none`);
    return {
      mode: 'asked',
      stepId,
      kind: step.kind,
      // A question may quote steps that are worked before the learner's eyes, never one that is asked.
      prompt: fillText(words.prompt, worksheet, text, { ...givens, ...shownValues(exercise, key) }),
      symbol: quantity?.symbol ?? null,
      units: quantity ? unitsOf(quantity.dimension) : [],
      tolerances: step.kind === 'numeric' && quantity ? tolerancesInWords(step.tolerance, quantity) : [],
      options: optionsOf(step, givens).map((id) => ({ id, text: fill(optionText(text, stepId, id)) })),
    };
  };
  return {
    seed,
    story: fill(exercise.story),
    givens: givenRows(worksheet, text, givens),
    steps: worksheet.steps.flatMap((step): (AskedStep | ShownStep)[] => {
      const mode = exercise.steps[step.id];
      if (mode === 'asked') return [asked(step.id)];
      return mode === 'shown' ? [{ mode, ...explainStep(worksheet, text, key, step.id) }] : [];
    }),
  };
}

/** "1.5 %", "0.1 A": the wider of the two counts, so both are told. */
function tolerancesInWords({ relative, absolute }: Tolerance, quantity: Quantity): string[] {
  return [
    ...(relative === undefined
      ? []
      : [formatQuantity(relative, 'ratio', { significantDigits: 'as-is', unit: '%' })]),
    ...(absolute === undefined ? [] : [formatFigure(differenceOf(quantity), absolute, 'as-is')]),
  ];
}

/** A margin on a temperature is a difference, so it is in kelvin. */
const differenceOf = (quantity: Quantity): Quantity =>
  quantity.dimension === 'temperature'
    ? { symbol: quantity.symbol, dimension: 'temperature-rise' }
    : quantity;

function shownValues(exercise: Pick<Exercise, 'steps'>, key: Values): Values {
  return Object.fromEntries(Object.entries(key).filter(([id]) => exercise.steps[id] === 'shown'));
}

/** Ids of the steps that an exercise asks, shows or hides, in worksheet order. */
export function stepsInMode(
  exercise: Pick<Exercise, 'steps'>,
  worksheet: Worksheet,
  mode: Exercise['steps'][string],
): string[] {
  return worksheet.steps.map((step) => step.id).filter((id) => exercise.steps[id] === mode);
}
