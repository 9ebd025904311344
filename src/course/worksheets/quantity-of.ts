import type { Quantity, Worksheet } from './worksheet.ts';

/** How the value at a path is written, or null for choices and texts. Indices in the path match `*`. */
export function quantityOf(worksheet: Worksheet, path: string): Quantity | null {
  const pattern = path.replace(/\.\d+(?=\.|$)/g, '.*');
  return worksheet.quantities[path] ?? worksheet.quantities[pattern] ?? null;
}
