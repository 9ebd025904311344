export type { QuantityPart } from './format-duration.ts';
export type { SignificantDigits } from './format-number.ts';
export { type FormatOptions, formatParts, formatQuantity } from './format-quantity.ts';
export { parseQuantity } from './parse-quantity.ts';
export type { ParsedQuantity, ReasonCode } from './parsed-quantity.ts';
export { type Dimension, dimensions } from './units.ts';
export { unitsOf } from './units-of.ts';
