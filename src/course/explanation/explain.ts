import type { WorksheetText } from '../schema/worksheet-text.ts';
import type { Formula } from '../worksheets/formula.ts';
import { quantityOf } from '../worksheets/quantity-of.ts';
import { solveWorksheet, stepOf } from '../worksheets/step-graph.ts';
import { numberAtPath } from '../worksheets/value-at-path.ts';
import type { NumericStep, StepValue, Values, Worksheet } from '../worksheets/worksheet.ts';
import { fillText } from './fill-text.ts';
import { figureTree, formatStepValue } from './format-value.ts';
import { formulaTree } from './formula-tree.ts';
import { type MathNode, mo, row, symbolTree } from './math-tree.ts';

export interface ExplainedStep {
  stepId: string;
  prompt: string;
  why: string;
  /** `I = S / U`: null for choices and orders. */
  formula: MathNode | null;
  /** The same line with this exercise's numbers and the result. */
  substituted: MathNode | null;
  result: string;
  /** Id in content/sources.yaml. */
  source: string;
}

/**
 * One step of the worked solution.
 *
 * @param values  givens and the values of all steps: the key's, or with the learner's own figures carried forward
 */
export function explainStep(
  worksheet: Worksheet,
  text: WorksheetText,
  values: Values,
  stepId: string,
): ExplainedStep {
  const step = stepOf(worksheet, stepId);
  const words = text.steps[stepId];
  if (!words) throw new RangeError(`steps.${stepId}: expected words for this step, found none`);
  const fill = (template: string): string => fillText(template, worksheet, text, values);
  const lines =
    step.kind === 'numeric' ? formulaLines(worksheet, step, values) : { formula: null, substituted: null };
  return {
    stepId,
    prompt: fill(words.prompt),
    why: fill(words.why),
    ...lines,
    result: formatStepValue(worksheet, text, stepId, values[stepId] as StepValue, fill),
    source: step.source,
  };
}

/** The whole worked solution of a worksheet for its givens. */
export function explainWorksheet(worksheet: Worksheet, text: WorksheetText, givens: Values): ExplainedStep[] {
  const values = solveWorksheet(worksheet, givens);
  return worksheet.steps.map((step) => explainStep(worksheet, text, values, step.id));
}

function formulaLines(worksheet: Worksheet, step: NumericStep<Values>, values: Values) {
  const shape = typeof step.formula === 'function' ? step.formula(values) : step.formula;
  const asSymbol = (path: string): MathNode => symbolTree(symbolOf(worksheet, path));
  const asFigure = (path: string): MathNode => {
    const quantity = quantityFor(worksheet, path);
    const unit = quantity.unitInFormula ?? quantity.unit;
    const isStep = worksheet.steps.some((candidate) => candidate.id === path);
    const figures = quantity.figures ?? (isStep ? 4 : 'as-is');
    return figureTree(unit ? { ...quantity, unit } : quantity, numberAtPath(values, path), figures);
  };
  const line = (symbolic: Formula): MathNode[] => [
    formulaTree(symbolic, asSymbol),
    formulaTree(symbolic, asFigure),
  ];
  const quantity = quantityFor(worksheet, step.id);
  const result = figureTree(quantity, numberAtPath(values, step.id), quantity.figures ?? 4);
  if (shape.op === 'equation') {
    const [left, leftFilled] = line(shape.left);
    const [right, rightFilled] = line(shape.right);
    return {
      formula: math(left, mo('='), right),
      // The result first: on a phone the end of a long line is out of sight.
      substituted: math(asSymbol(step.id), mo('='), result, mo(':'), leftFilled, mo('='), rightFilled),
    };
  }
  const [symbolic, filled] = line(shape);
  return {
    formula: math(asSymbol(step.id), mo('='), symbolic),
    substituted: math(asSymbol(step.id), mo('='), filled, mo('='), result),
  };
}

const math = (...nodes: (MathNode | undefined)[]): MathNode => ({
  tag: 'math',
  attributes: { display: 'block' },
  children: [row(...nodes.filter((node) => node !== undefined))],
});

function quantityFor(worksheet: Worksheet, path: string) {
  const quantity = quantityOf(worksheet, path);
  if (!quantity) throw new RangeError(`quantities.${path}: expected a symbol and a dimension, found none`);
  return quantity;
}

/** A list's symbol carries `*` where the place in the list stands: `S_*` becomes `S_2`. */
function symbolOf(worksheet: Worksheet, path: string): string {
  const place = path.match(/\.(\d+)(\.|$)/)?.[1];
  const { symbol } = quantityFor(worksheet, path);
  return place === undefined ? symbol : symbol.replace('*', String(Number(place) + 1));
}
