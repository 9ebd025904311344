import { stepOf } from '../worksheets/step-graph.ts';
import type { Step, StepValue, Values, Worksheet } from '../worksheets/worksheet.ts';

/** A learner's figure further than this from the key is not carried forward: it would make later steps trivial. */
const DEFAULT_PLAUSIBLE_RATIO = { from: 1 / 5, to: 5 };

function isPlausible(step: Step, given: StepValue, key: unknown): boolean {
  if (step.kind !== 'numeric') return true;
  if (typeof given !== 'number' || typeof key !== 'number') return false;
  const { from, to } = step.plausibleRatio ?? DEFAULT_PLAUSIBLE_RATIO;
  if (key === 0) return given === 0;
  const ratio = given / key;
  return ratio >= from && ratio <= to;
}

/** Of the learner's figures, those that later steps may be marked against. */
export function carriedFigures(
  worksheet: Worksheet,
  key: Values,
  given: Readonly<Record<string, StepValue>>,
): Record<string, StepValue> {
  const carried: Record<string, StepValue> = {};
  for (const [stepId, value] of Object.entries(given)) {
    if (isPlausible(stepOf(worksheet, stepId), value, key[stepId])) carried[stepId] = value;
  }
  return carried;
}
