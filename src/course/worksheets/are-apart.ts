/**
 * Whether figures can be told from each other at a tolerance: the key and what the slips lead to. Nulls (a slip that does
 * not apply) are passed over.
 *
 * @param relative  least distance of any two, as a share of the larger
 */
export function areApart(figures: readonly (number | null)[], relative: number): boolean {
  const known = figures.filter((figure) => figure !== null);
  return known.every((left, place) =>
    known
      .slice(place + 1)
      .every((right) => Math.abs(left - right) > relative * Math.max(Math.abs(left), Math.abs(right))),
  );
}
