import { formatQuantity } from '../../engine/index.ts';
import { orderToText } from '../answers/order-text.ts';
import { quantityOf } from '../worksheets/quantity-of.ts';
import type { StepValue, Worksheet } from '../worksheets/worksheet.ts';

/** A step's value as a learner would enter it, with enough figures to be read back as the same answer. */
export function answerText(worksheet: Worksheet, stepId: string, value: StepValue): string {
  if (typeof value === 'string') return value;
  if (typeof value !== 'number') return orderToText(value);
  const quantity = quantityOf(worksheet, stepId);
  if (!quantity) throw new RangeError(`quantities.${stepId}: expected a symbol and a dimension, found none`);
  return formatQuantity(value, quantity.dimension, {
    significantDigits: 4,
    ...(quantity.unit === undefined ? {} : { unit: quantity.unit }),
  });
}
