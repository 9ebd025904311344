import { describe, expect, it } from 'vitest';
import { exampleModel } from '../../../engine/index.ts';
import {
  currentRows,
  liesBetweenRows,
  multipleRows,
  rowBelow,
  rowFor,
  timeBetweenRows,
} from './table-rows.ts';

describe('rows of a time-to-stop table', () => {
  it('are round, rising, at most twelve, above the continuous current and within the limit', () => {
    for (const continuousA of [4.78, 12.6, 14.7, 22.6, 33.3, 65.2]) {
      const limitA = continuousA * 2.15;
      const rows = currentRows({ continuousA, limitA });
      expect(rows.length).toBeGreaterThanOrEqual(6);
      expect(rows.length).toBeLessThanOrEqual(12);
      expect(rows).toEqual([...new Set(rows)].sort((left, right) => left - right));
      expect(rows[0]).toBeGreaterThan(continuousA);
      expect(rows.at(-1)).toBeLessThanOrEqual(limitA);
      for (const row of rows) expect(Number(row.toPrecision(3))).toBe(row);
    }
  });

  it('stop at the current limit', () => {
    expect(multipleRows({ continuousA: 10, limitA: 15.5 }).at(-1)).toBe(1.5);
    expect(multipleRows(exampleModel).length).toBeLessThanOrEqual(12);
  });
});

describe('reading on the safe side', () => {
  const rows = [12, 13, 14];

  it('takes the row at the load or just above it', () => {
    expect(rowFor(rows, 12.1)).toBe(13);
    expect(rowFor(rows, 13)).toBe(13);
    expect(rowFor(rows, 14.1)).toBeNull();
    expect(rowBelow(rows, 12.9)).toBe(12);
    expect(rowBelow(rows, 12)).toBeNull();
  });

  it('refuses loads outside the table or next to a row', () => {
    expect(liesBetweenRows(rows, 12.5)).toBe(true);
    expect(liesBetweenRows(rows, 12.9)).toBe(false);
    expect(liesBetweenRows(rows, 11.5)).toBe(false);
    expect(liesBetweenRows(rows, 14.5)).toBe(false);
  });

  it('knows what straight reading between two rows would give', () => {
    const curve = (row: number) => (row === 14 ? null : 1000 - row);
    expect(timeBetweenRows(curve, rows, 12.25)).toBe(987.75);
    expect(timeBetweenRows(curve, rows, 13.5)).toBeNull();
  });
});
