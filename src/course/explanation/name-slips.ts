import type { Diagnosis } from '../diagnosis/diagnose.ts';
import type { WorksheetText } from '../schema/worksheet-text.ts';
import type { SlipRef } from '../worksheets/step-graph.ts';
import type { Values, Worksheet } from '../worksheets/worksheet.ts';
import { fillText } from './fill-text.ts';

/** What a slip teaches. @throws {RangeError} when the worksheet's words lack it. */
function slipText(worksheet: Worksheet, text: WorksheetText, values: Values, ref: SlipRef): string {
  const words = text.steps[ref.stepId]?.slips[ref.slipId];
  if (words === undefined) {
    throw new RangeError(`steps.${ref.stepId}.slips.${ref.slipId}: expected words for this slip, found none`);
  }
  return fillText(words, worksheet, text, values);
}

/** Each possible explanation of a wrong figure as its sentences: one slip or two together. Empty when nothing fits. */
export function nameSlips(
  worksheet: Worksheet,
  text: WorksheetText,
  values: Values,
  diagnosis: Diagnosis,
): string[][] {
  return diagnosis.sets.map((set) => set.map((ref) => slipText(worksheet, text, values, ref)));
}
