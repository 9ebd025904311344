import { expect, it } from 'vitest';
import { dimensions, units } from './units.ts';
import { unitsOf } from './units-of.ts';

it('lists the symbols, base unit first, and none where a bare number is the only form', () => {
  expect(unitsOf('apparent-power')).toEqual(['VA', 'kVA', 'MVA']);
  expect(unitsOf('time')[0]).toBe('s');
  expect(unitsOf('count')).toEqual([]);
});

it('has exactly one base unit per dimension, and it comes first', () => {
  for (const dimension of dimensions) {
    const first = units[dimension][0];
    expect([dimension, first?.tens, first?.scale]).toEqual([dimension, 0, 1]);
  }
});

it('keeps every symbol once within a dimension', () => {
  for (const dimension of dimensions) {
    const symbols = units[dimension].map((unit) => unit.symbol);
    expect(new Set(symbols).size).toBe(symbols.length);
  }
});
