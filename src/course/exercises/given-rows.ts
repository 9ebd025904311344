import { formatQuantity, type InverterDatasheet, type InverterModel } from '../../engine/index.ts';
import { formatFigure } from '../explanation/format-value.ts';
import type { WorksheetText } from '../schema/worksheet-text.ts';
import type { DatasheetLine } from '../worksheets/datasheet-line.ts';
import { quantityOf } from '../worksheets/quantity-of.ts';
import type { GivenSpec, GivenTable, Values, Worksheet } from '../worksheets/worksheet.ts';

/** A table ready to print. A `null` cell is drawn as the words for "never". */
export interface PrintedTable {
  caption: string;
  columns: readonly string[];
  rows: readonly (readonly (string | null)[])[];
}

/** The givens of an exercise as a learner reads them. */
export interface GivenRows {
  facts: readonly { label: string; value: string }[];
  tables: readonly PrintedTable[];
  /** Printed beside the exercise as datasheet cards. */
  datasheets: readonly InverterDatasheet[];
  /** Lines of each datasheet that the question turns on; null for all. */
  datasheetLines: readonly DatasheetLine[] | null;
}

const labelOf = (text: WorksheetText, name: string): string => {
  const words = text.givens[name];
  if (words === undefined) throw new RangeError(`givens.${name}: expected words for this given, found none`);
  return typeof words === 'string' ? words : words.label;
};

export function givenRows(worksheet: Worksheet, text: WorksheetText, givens: Values): GivenRows {
  const facts: { label: string; value: string }[] = [];
  const tables: PrintedTable[] = [];
  const datasheets: InverterDatasheet[] = [];
  for (const [name, spec] of Object.entries(worksheet.givens)) {
    const value = givens[name];
    if (spec.kind === 'inverter') datasheets.push((value as InverterModel).datasheet);
    else if (spec.kind === 'inverters')
      datasheets.push(...(value as InverterModel[]).map((one) => one.datasheet));
    else if (spec.kind === 'list') tables.push(listTable(worksheet, text, name, spec, value as Values[]));
    else facts.push({ label: labelOf(text, name), value: printed(worksheet, text, name, value) });
  }
  for (const table of worksheet.tables?.(givens) ?? []) tables.push(computedTable(text, table));
  return { facts, tables, datasheets, datasheetLines: worksheet.datasheetLines ?? null };
}

function printed(worksheet: Worksheet, text: WorksheetText, path: string, value: unknown): string {
  const quantity = quantityOf(worksheet, path);
  if (typeof value === 'number' && quantity) return formatFigure(quantity, value, 'as-is');
  const words = text.givens[path];
  return (typeof words === 'object' ? words.options?.[String(value)] : undefined) ?? String(value);
}

function listTable(
  worksheet: Worksheet,
  text: WorksheetText,
  name: string,
  spec: GivenSpec & { kind: 'list' },
  entries: readonly Values[],
): PrintedTable {
  const words = text.givens[name];
  const fields = Object.keys(spec.of);
  return {
    caption: labelOf(text, name),
    columns: fields.map((field) => {
      const head = typeof words === 'object' ? words.fields?.[field] : undefined;
      if (head === undefined)
        throw new RangeError(`givens.${name}.fields.${field}: expected a column head, found none`);
      return head;
    }),
    rows: entries.map((entry, place) =>
      fields.map((field) => printed(worksheet, text, `${name}.${place}.${field}`, entry[field])),
    ),
  };
}

function computedTable(text: WorksheetText, table: GivenTable): PrintedTable {
  const words = text.tables?.[table.id];
  if (!words) throw new RangeError(`tables.${table.id}: expected a caption and column heads, found none`);
  return {
    caption: words.caption,
    columns: table.columns.map((column) => {
      const head = words.columns[column.id];
      if (head === undefined)
        throw new RangeError(`tables.${table.id}.columns.${column.id}: expected a head, found none`);
      return head;
    }),
    rows: table.rows.map((cells) =>
      cells.map((cell, place) => {
        const dimension = table.columns[place]?.dimension ?? 'text';
        if (typeof cell !== 'number' || dimension === 'text') return cell === null ? null : String(cell);
        return formatQuantity(cell, dimension, { significantDigits: 3 });
      }),
    ),
  };
}
