import { type ParsedQuantity, parseQuantity } from '../../engine/index.ts';
import type { Quantity, Step, StepValue, Values } from '../worksheets/worksheet.ts';
import { orderFromText } from './order-text.ts';

export type NotReadyReason =
  | Extract<ParsedQuantity, { kind: 'not-ready' }>['reason']
  | 'not-chosen'
  | 'not-an-option'
  | 'order-incomplete';

export type ParsedAnswer =
  | { kind: 'ready'; value: StepValue }
  | { kind: 'not-ready'; reason: NotReadyReason; found: string };

/** The option ids of a choice or ordering step for these givens. */
export function optionsOf(step: Step, values: Values): readonly string[] {
  if (step.kind === 'numeric') return [];
  return typeof step.options === 'function' ? step.options(values) : step.options;
}

/**
 * Turns what a learner entered into a value to be marked, or says why it cannot be marked yet. Never throws on any text:
 * an unreadable entry costs no attempt.
 */
export function parseAnswer(
  step: Step,
  quantity: Quantity | null,
  values: Values,
  text: string,
): ParsedAnswer {
  if (step.kind === 'numeric') {
    const parsed = parseQuantity(text, quantity?.dimension ?? 'count');
    return parsed.kind === 'ok' ? { kind: 'ready', value: parsed.value } : parsed;
  }
  const options = optionsOf(step, values);
  if (step.kind === 'choice') {
    const chosen = text.trim();
    if (chosen === '') return { kind: 'not-ready', reason: 'not-chosen', found: '' };
    if (!options.includes(chosen)) return { kind: 'not-ready', reason: 'not-an-option', found: chosen };
    return { kind: 'ready', value: chosen };
  }
  const order = orderFromText(text);
  const stranger = order.find((id) => !options.includes(id));
  if (stranger !== undefined) return { kind: 'not-ready', reason: 'not-an-option', found: stranger };
  if (order.length !== options.length || new Set(order).size !== options.length) {
    return { kind: 'not-ready', reason: 'order-incomplete', found: text };
  }
  return { kind: 'ready', value: order };
}
