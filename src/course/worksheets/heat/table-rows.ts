import { type Formula, smallest } from '../formula.ts';

/** Loads as multiples of the continuous current: closer where the time falls steeply. */
const MULTIPLES = [1.05, 1.1, 1.15, 1.2, 1.3, 1.4, 1.5, 1.6, 1.8, 2, 2.25, 2.5] as const;

const MOST_ROWS = 12;
/** Up to such a multiple of the continuous current the curve is steep and rows lie at the fine step, beyond at the coarse one. */
const STEEP_RATIOS = [1.4, 1.25] as const;
/** Fine and coarse step, in amperes. */
const STEPS = [
  [0.1, 0.2],
  [0.2, 0.5],
  [0.5, 1],
  [1, 2],
  [2, 5],
  [5, 10],
  [10, 20],
] as const;
/** A load this close to a row could be rounded to either side of it. */
const CLEAR_RATIO = 0.01;

interface Range {
  /** Continuous current: at it the unit never stops. */
  continuousA: number;
  limitA: number;
}

/** Multiples of the continuous current to print times for, up to the current limit. */
export const multipleRows = ({ continuousA, limitA }: Range): number[] =>
  MULTIPLES.filter((multiple) => multiple <= limitA / continuousA);

/** Round currents to print times for, above the continuous current and up to the limit: twelve at most. */
export function currentRows(range: Range): readonly number[] {
  const known = rowsOf.get(range) ?? findRows(range);
  rowsOf.set(range, known);
  return known;
}

/** The search for slips asks for the same unit's rows hundreds of times. */
const rowsOf = new WeakMap<Range, readonly number[]>();

function findRows(range: Range): number[] {
  for (const steps of STEPS) {
    for (const steepRatio of STEEP_RATIOS) {
      const rows = rowsInSteps(range, steps, steepRatio);
      if (rows.length <= MOST_ROWS) return rows;
    }
  }
  throw new RangeError(`limitA: expected a range that ${MOST_ROWS} rows can cover, found ${range.limitA} A`);
}

function rowsInSteps(
  { continuousA, limitA }: Range,
  [fine, coarse]: readonly [number, number],
  steepRatio: number,
): number[] {
  const rows: number[] = [];
  let row = nextMultiple(continuousA * 1.005, fine);
  while (row <= limitA) {
    rows.push(row);
    row = nextMultiple(row, row < steepRatio * continuousA ? fine : coarse);
  }
  return rows;
}

const nextMultiple = (load: number, step: number): number =>
  Number(((Math.floor(load / step + 1e-9) + 1) * step).toPrecision(6));

/** The row to read: the one at the load or just above it, on the safe side. Null above the last row. */
export const rowFor = (rows: readonly number[], load: number): number | null =>
  rows.find((row) => row >= load) ?? null;

/** The row just below the load: the hopeful one. Null below the first row. */
export const rowBelow = (rows: readonly number[], load: number): number | null =>
  rows.findLast((row) => row < load) ?? null;

/** Whether the load lies between two rows and so far from both that rounding cannot move it past one. */
export const liesBetweenRows = (rows: readonly number[], load: number): boolean =>
  rowBelow(rows, load) !== null &&
  rowFor(rows, load) !== null &&
  rows.every((row) => Math.abs(load / row - 1) > CLEAR_RATIO);

/** The smallest of the rows that are not below the load. Three of them say enough; of one there is nothing to choose. */
export function rowFormula(rows: readonly number[], load: number): Formula {
  const [first, ...others] = rows.filter((row) => row >= load).slice(0, 3);
  return first !== undefined && others.length === 0
    ? { op: 'number', value: first }
    : smallest(...(first === undefined ? [] : [first]), ...others);
}

/** Time read straight between the two rows around a load; null where there is nothing to read. */
export function timeBetweenRows(
  curve: (row: number) => number | null,
  rows: readonly number[],
  load: number,
): number | null {
  const below = rowBelow(rows, load);
  const above = rowFor(rows, load);
  if (below === null || above === null) return null;
  const longer = curve(below);
  const shorter = curve(above);
  if (longer === null || shorter === null) return null;
  return longer + ((shorter - longer) * (load - below)) / (above - below);
}
