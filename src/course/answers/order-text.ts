/** Joins an order of options into the one string that a draft stores. */
const ORDER_SEPARATOR = '>';

export const orderToText = (order: readonly string[]): string => order.join(ORDER_SEPARATOR);

export const orderFromText = (text: string): string[] =>
  text.trim() === '' ? [] : text.split(ORDER_SEPARATOR).map((id) => id.trim());
