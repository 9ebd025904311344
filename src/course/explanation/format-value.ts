import { formatParts, formatQuantity } from '../../engine/index.ts';
import type { WorksheetText } from '../schema/worksheet-text.ts';
import { quantityOf } from '../worksheets/quantity-of.ts';
import { stepOf } from '../worksheets/step-graph.ts';
import type { Quantity, StepValue, Worksheet } from '../worksheets/worksheet.ts';
import { type MathNode, mn, mtext, row } from './math-tree.ts';

/** Significant figures: givens as they were given, results to four, so that a learner can follow the rounding. */
export type Figures = 'as-is' | number;

const optionsFor = (quantity: Quantity, figures: Figures) => ({
  significantDigits: figures,
  ...(quantity.unit === undefined ? {} : { unit: quantity.unit }),
});

/** A figure with its unit, as text. */
export function formatFigure(quantity: Quantity, value: number, figures: Figures): string {
  return formatQuantity(value, quantity.dimension, optionsFor(quantity, figures));
}

/** A figure with its unit, as MathML data. */
export function figureTree(quantity: Quantity, value: number, figures: Figures): MathNode {
  const parts = formatParts(value, quantity.dimension, optionsFor(quantity, figures));
  const nodes = parts.flatMap((part, place): MathNode[] => [
    ...(place > 0 ? [space] : []),
    mn(part.number),
    ...(part.unit === '' ? [] : [space, mtext(part.unit)]),
  ]);
  return nodes.length === 1 && nodes[0] ? nodes[0] : row(...nodes);
}

const space: MathNode = { tag: 'mspace', attributes: { width: '0.2em' } };

/** The words of one option. @throws {RangeError} when the worksheet's words lack it. */
export function optionText(text: WorksheetText, stepId: string, option: string): string {
  const words = text.steps[stepId]?.options?.[option];
  if (words === undefined) {
    throw new RangeError(`steps.${stepId}.options.${option}: expected words for this option, found none`);
  }
  return words;
}

/** Any step's value in the words and figures a learner reads. */
export function formatStepValue(
  worksheet: Worksheet,
  text: WorksheetText,
  stepId: string,
  value: StepValue,
  fill: (template: string) => string = (template) => template,
): string {
  const step = stepOf(worksheet, stepId);
  if (step.kind === 'numeric') {
    const quantity = quantityOf(worksheet, stepId);
    if (!quantity || typeof value !== 'number') {
      throw new RangeError(
        `${worksheet.id}.${stepId}: expected a quantity and a number, found ${String(value)}`,
      );
    }
    return formatFigure(quantity, value, quantity.figures ?? 4);
  }
  const ids = typeof value === 'string' ? [value] : (value as readonly string[]);
  return ids.map((id) => fill(optionText(text, stepId, id))).join(' → ');
}
