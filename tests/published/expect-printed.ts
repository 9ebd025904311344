import { expect, it } from 'vitest';
import { halfLastDigit, type PublishedRow, unitFactor } from './rows/published-row.ts';

/** Results of a calculation by figure name, in base units. */
export type Solver = (given: Readonly<Record<string, number>>) => Readonly<Record<string, number>>;

function distanceInDigits(value: number, text: string): number {
  // One part in 10¹² of slack: a printed figure may lie exactly half a digit away in decimal, and a hair more in binary.
  return Math.abs(value - Number(text)) / halfLastDigit(text) - Math.abs(value) * 1e-12;
}

/** Makes one test per row: the calculated figure agrees with the printed one to half its last digit, or with the exact one where the source errs. */
export function testRows(rows: readonly PublishedRow[], solvers: Readonly<Record<string, Solver>>): void {
  for (const row of rows) {
    it(`${row.id} ${row.source}, ${row.place}: ${row.figure} ${row.printed} ${row.unit}`, () => {
      const value = (solvers[row.id]?.(row.given)[row.figure] ?? Number.NaN) / unitFactor(row.unit);
      expect(value, `no figure "${row.figure}" is calculated for ${row.id}`).not.toBeNaN();
      const agreesWithPrinted = distanceInDigits(value, row.printed) <= 1;
      const shown = `calculated ${value}, printed ${row.printed}`;
      if (row.exact === undefined) expect(agreesWithPrinted, shown).toBe(true);
      else {
        expect(row.note, 'a row that disagrees with its source says why').toBeTruthy();
        expect(agreesWithPrinted, `${shown}: the source is right after all`).toBe(false);
        expect(
          distanceInDigits(value, row.exact),
          `calculated ${value}, exact ${row.exact}`,
        ).toBeLessThanOrEqual(1);
      }
    });
  }
  it('has a calculation for every row and a row for every calculation', () => {
    expect([...new Set(rows.map((row) => row.id))].sort()).toEqual(Object.keys(solvers).sort());
  });
}
