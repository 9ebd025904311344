import type { WorksheetText } from '../schema/worksheet-text.ts';
import { quantityOf } from '../worksheets/quantity-of.ts';
import { numberAtPath } from '../worksheets/value-at-path.ts';
import type { Values, Worksheet } from '../worksheets/worksheet.ts';
import { formatFigure } from './format-value.ts';

/**
 * Puts formatted values into the `{path}` places of a sentence. A given is written as it was given, a step's result to four
 * figures; an inverter is written by its name, a choice by its words.
 *
 * @throws {RangeError} when the sentence names something the worksheet does not have
 */
export function fillText(
  template: string,
  worksheet: Worksheet,
  text: WorksheetText,
  values: Values,
): string {
  return template.replace(/\{([a-zA-Z0-9.]+)\}/g, (_, path: string) => {
    const value = values[path];
    const words = text.givens[path];
    if (typeof value === 'string') {
      const step = text.steps[path];
      const named =
        step?.options?.[value] ?? (typeof words === 'object' ? words.options?.[value] : undefined);
      return named ?? value;
    }
    const datasheet = (value as { datasheet?: { name?: string } } | undefined)?.datasheet;
    if (datasheet?.name) return datasheet.name;
    const quantity = quantityOf(worksheet, path);
    if (!quantity) throw new RangeError(`{${path}}: expected the name of a value in "${worksheet.id}"`);
    const isStep = worksheet.steps.some((step) => step.id === path);
    return formatFigure(quantity, numberAtPath(values, path), isStep ? 4 : 'as-is');
  });
}
