/** One figure of a published calculation, kept as it was printed. */
export type PublishedRow = {
  /** Number of the calculation in our list; several figures of one calculation share it. */
  id: string;
  /** Id of an entry in content/sources.yaml. */
  source: string;
  /** Where in the source: chapter, example, page. */
  place: string;
  given: Readonly<Record<string, number>>;
  /** Name of the figure among the results of the calculation. */
  figure: string;
  /** As printed; "derived" rows hold our own hand-worked figure instead. */
  printed: string;
  unit: string;
  basis: 'published' | 'derived' | 'memory';
  /** The right figure, where the source rounds on the way or errs; the note says which. */
  exact?: string;
  note?: string;
};

type Figure = readonly [
  printed: string,
  unit: string,
  more?: Partial<Pick<PublishedRow, 'basis' | 'exact' | 'note'>>,
];

/** Rows of one calculation: what they share, then each figure as [printed, unit, what is special about it]. */
export function rowsOf(
  shared: Omit<PublishedRow, 'figure' | 'printed' | 'unit'>,
  figures: Readonly<Record<string, Figure>>,
): PublishedRow[] {
  return Object.entries(figures).map(([figure, [printed, unit, more]]) => ({
    ...shared,
    figure,
    printed,
    unit,
    ...more,
  }));
}

const multiples: Readonly<Record<string, number>> = { k: 1e3, m: 1e-3, µ: 1e-6 };
const prefixedUnits = new Set(['kW', 'kVA', 'kvar', 'mA', 'mH', 'µF', 'mV']);

/** How many base units the printed unit is. */
export function unitFactor(unit: string): number {
  if (!prefixedUnits.has(unit)) return 1;
  return multiples[unit.charAt(0)] ?? 1;
}

/** Half of the last digit printed. */
export function halfLastDigit(printed: string): number {
  const decimals = printed.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
}
