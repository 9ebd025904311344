import { expect, it } from 'vitest';
import { areApart } from './are-apart.ts';

it('tells figures apart by a share of the larger and passes over nulls', () => {
  expect(areApart([100, null, 111], 0.1)).toBe(false);
  expect(areApart([100, null, 112], 0.1)).toBe(true);
  expect(areApart([100, 200, 201], 0.1)).toBe(false);
  expect(areApart([0, 1], 0.1)).toBe(true);
});
