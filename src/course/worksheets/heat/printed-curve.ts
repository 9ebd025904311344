/** A printed table is read straight between two rows. Where that misses by more than this, rows are set closer. */
const READING_ERROR_RATIO = 0.03;

/** Table cells are printed to three figures; a load that needs more would be printed wrong. */
const PRINTED_FIGURES = 3;

/** Time by load; null where the unit runs for ever. */
type Curve = (load: number) => number | null;

const STEP_DIGITS = [5, 2, 1] as const;

/** Round steps (5, 2 and 1 times powers of ten) from the largest that is not above the wish, four in all. */
function roundSteps(widest: number): number[] {
  const exponent = Math.floor(Math.log10(widest) + 1e-9);
  const steps = [0, -1, -2].flatMap((down) =>
    STEP_DIGITS.map((digit) => Number((digit * 10 ** (exponent + down)).toPrecision(1))),
  );
  return steps.filter((step) => step <= widest * (1 + 1e-9)).slice(0, 4);
}

/**
 * Loads to print in a table of time by load: round numbers, close together only where one of the curves bends.
 *
 * @param range.widest  no two rows lie further apart than this
 */
export function tableLoads(
  curves: readonly Curve[],
  range: { from: number; to: number; widest: number },
): number[] {
  const steps = roundSteps(range.widest);
  const finest = steps.at(-1) ?? range.widest;
  const loads = [rounded(Math.ceil(range.from / finest - 1e-9) * finest)];
  for (;;) {
    const load = loads.at(-1) ?? range.to;
    const next = steps
      .map((step) => nextMultiple(load, step))
      .find((candidate) => isReadable(curves, load, candidate));
    const row = next ?? nextMultiple(load, finest);
    if (row > range.to * (1 + 1e-9)) return loads;
    loads.push(row);
  }
}

const rounded = (load: number): number => Number(load.toPrecision(PRINTED_FIGURES));
/** At least one unit of the last printed figure further on, so that no row is printed twice. */
function nextMultiple(load: number, step: number): number {
  const printedStep = Math.max(step, 10 ** (Math.floor(Math.log10(load)) + 1 - PRINTED_FIGURES));
  return rounded((Math.floor(load / printedStep + 1e-6) + 1) * printedStep);
}

const isReadable = (curves: readonly Curve[], left: number, right: number): boolean =>
  curves.every((curve) =>
    [0.25, 0.5, 0.75].every((share) => {
      const missed = missedBy(curve, left, right, left + (right - left) * share);
      return missed === null || missed <= READING_ERROR_RATIO;
    }),
  );

/** By what share straight reading misses; null where there is nothing to read. */
function missedBy(curve: Curve, left: number, right: number, load: number): number | null {
  const start = curve(left);
  const end = curve(right);
  const exact = curve(load);
  if (start === null || end === null || exact === null) return null;
  return Math.abs((start + ((end - start) * (load - left)) / (right - left)) / exact - 1);
}

/** Whether reading the printed rows straight between two neighbours gives the time for this load. */
export function readsWell(curve: Curve, loads: readonly number[], load: number): boolean {
  const place = loads.findIndex((row) => row >= load);
  const left = loads[place - 1];
  const right = loads[place];
  if (left === undefined || right === undefined) return false;
  const missed = missedBy(curve, left, right, load);
  return missed !== null && missed <= 1.5 * READING_ERROR_RATIO;
}
