import type { NumericStep, Slip } from '../worksheet.ts';
import { rowBelow, rowFor, rowFormula } from './table-rows.ts';

/**
 * "Which row do you read?": the row at the load or just above it. The two slips of the reading itself come with the step,
 * as `row-below` and `not-a-row`; those that lead to the row of another quantity are the worksheet's.
 */
export function rowStep<V>(given: {
  id: keyof V & string;
  needs: readonly (keyof V & string)[];
  rows(values: V): readonly number[];
  load(values: V): number;
  slips: readonly Slip<V, number>[];
}): NumericStep<V> {
  const { id, needs, rows, load, slips } = given;
  return {
    kind: 'numeric',
    id,
    needs,
    solve: (values) => {
      const row = rowFor(rows(values), load(values));
      if (row === null)
        throw new RangeError(`${id}: expected a load within the table, found ${load(values)}`);
      return row;
    },
    formula: (values) => rowFormula(rows(values), load(values)),
    tolerance: { relative: 0.004 },
    source: 'common-practice',
    slips: [
      { id: 'row-below', solve: (values) => rowBelow(rows(values), load(values)) },
      { id: 'not-a-row', solve: load },
      ...slips,
    ],
  };
}
