import type { Dimension } from '../../engine/index.ts';
import type { DatasheetLine } from './datasheet-line.ts';
import type { Equation, Formula } from './formula.ts';

/** What a step yields: a number in SI units, the id of one option, or option ids in order. */
export type StepValue = number | string | readonly string[];

/** Everything a worksheet knows: its givens and the values of its steps, by id. */
export type Values = Readonly<Record<string, unknown>>;

/** How a quantity is written. `symbol` is a letter, then optionally `_` and a subscript: `I_load`. */
export interface Quantity {
  symbol: string;
  dimension: Dimension;
  /** Unit to show it in; the format picks one when absent. */
  unit?: string;
  /** Unit inside a formula, where "622 s" reads better than "10 min 22 s". */
  unitInFormula?: string;
  /** Significant figures inside a formula: few for constants worked out from a datasheet, 'as-is' for a round figure read off. */
  figures?: number | 'as-is';
}

/**
 * A wrong way that people really take: another function in place of the step's own. It returns null where it does not
 * apply to these numbers. Its feedback stands in the worksheet's words under the same id.
 */
export interface Slip<V, T extends StepValue> {
  id: string;
  solve(values: V): T | null;
}

interface StepBase<V> {
  /** Also the key of this step's value among the values. */
  id: keyof V & string;
  /** Ids of givens and earlier steps that `solve`, the slips and the formula read. */
  needs: readonly (keyof V & string)[];
  /** Id in content/sources.yaml. */
  source: string;
}

/** How close is right: relative to the key, or absolute in the step's SI unit; the wider of the two when both are given. */
export interface Tolerance {
  relative?: number;
  absolute?: number;
}

export interface NumericStep<V> extends StepBase<V> {
  kind: 'numeric';
  solve(values: V): number;
  /** A function where the shape depends on the numbers (a sum over a list of loads). */
  formula: Formula | Equation | ((values: V) => Formula | Equation);
  tolerance: Tolerance;
  /** Multiples of the key within which a learner's own figure may be carried forward; a fifth to five times by default. */
  plausibleRatio?: { from: number; to: number };
  slips: readonly Slip<V, number>[];
}

/** One of several. Every wrong option is a slip whose `solve` returns the option's id. */
export interface ChoiceStep<V> extends StepBase<V> {
  kind: 'choice';
  /** Option ids in the order they are shown; a function where they depend on the givens. */
  options: readonly string[] | ((values: V) => readonly string[]);
  solve(values: V): string;
  slips: readonly Slip<V, string>[];
}

/** A sequence to be put in order. */
export interface OrderingStep<V> extends StepBase<V> {
  kind: 'ordering';
  options: readonly string[] | ((values: V) => readonly string[]);
  solve(values: V): readonly string[];
  slips: readonly Slip<V, readonly string[]>[];
}

export type Step<V = Values> = NumericStep<V> | ChoiceStep<V> | OrderingStep<V>;

/** What an exercise must supply under this name. Limits are inclusive and in SI units. */
export type GivenSpec =
  | { kind: 'number'; dimension: Dimension; from: number; to: number }
  | { kind: 'text' }
  | { kind: 'choice'; options: readonly string[] }
  | { kind: 'inverter' }
  | { kind: 'inverters' }
  | { kind: 'list'; of: Readonly<Record<string, GivenSpec>>; from: number; to: number };

/** A table computed from the givens and printed with the exercise, such as a unit's time-to-stop table. */
export interface GivenTable {
  /** Key of the caption among the worksheet's words. */
  id: string;
  columns: readonly { id: string; dimension: Dimension | 'text' }[];
  /** `null` prints the words for "never". */
  rows: readonly (readonly (number | string | null)[])[];
}

export interface Worksheet<V = Values> {
  id: string;
  /** Number of the course unit it belongs to. */
  unit: number;
  givens: Readonly<Record<string, GivenSpec>>;
  /** By value path; `*` stands for the index in a list: `loads.*.apparentPowerVa`. */
  quantities: Readonly<Record<string, Quantity>>;
  /** Whether these numbers make the question worth asking; numbers are drawn anew until it does. */
  accepts?(givens: V): boolean;
  /** The lines of the datasheet that the question turns on: printed open, the rest folded. All of them when absent. */
  datasheetLines?: readonly DatasheetLine[];
  tables?(givens: V): readonly GivenTable[];
  steps: readonly Step<V>[];
}

/**
 * Declares a worksheet whose step functions are checked against the value type `V`. The registry holds worksheets of many
 * value types; this is the one place where that type is let go, because the graph itself guarantees it at run time:
 * a step is solved only after everything in `needs`.
 */
export function defineWorksheet<V extends object>(worksheet: Worksheet<V>): Worksheet {
  return worksheet as unknown as Worksheet;
}
