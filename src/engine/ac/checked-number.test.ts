import { expect, it } from 'vitest';
import { checkedNumber } from './checked-number.ts';

it('hands a number through on its inclusive limits and refuses it on its exclusive ones', () => {
  expect(checkedNumber('x', 1, { min: 1, max: 1 })).toBe(1);
  expect(() => checkedNumber('x', 1, { above: 1 })).toThrow('x: expected a number > 1, found 1');
  expect(() => checkedNumber('x', 1, { min: 0, below: 1 })).toThrow(
    'x: expected a number ≥ 0 and < 1, found 1',
  );
  expect(() => checkedNumber('x', 2, { max: 1 })).toThrow('x: expected a number ≤ 1, found 2');
});

it('refuses what is not finite even without limits', () => {
  expect(() => checkedNumber('x', Number.NaN)).toThrow('x: expected a number that is finite, found NaN');
  expect(() => checkedNumber('x', Number.POSITIVE_INFINITY, { min: 0 })).toThrow(RangeError);
});
