import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '../worksheets/evaluate-formula.ts';
import {
  difference,
  equation,
  exp,
  fraction,
  ln,
  negative,
  power,
  product,
  root,
  sum,
} from '../worksheets/formula.ts';
import { formulaTree } from './formula-tree.ts';
import { mathText } from './math-text.ts';
import { symbolTree } from './math-tree.ts';

const values = { a: 3, b: 4, list: [{ x: 5 }, { x: 12 }] };
const text = (formula: Parameters<typeof formulaTree>[0]): string =>
  mathText(formulaTree(formula, symbolTree));

describe('a formula', () => {
  it.each([
    [sum('a', 'b'), 'a + b', 7],
    [difference('a', sum('a', 'b')), 'a − (a + b)', -4],
    [product(2, sum('a', 'b')), '2 · (a + b)', 14],
    [fraction(sum('a', 1), product('b', 2)), '(a + 1) / (b · 2)', 0.5],
    [fraction('a', fraction('a', 'b')), 'a / (a / b)', 4],
    [root(sum(power('a', 2), power('b', 2))), '√(a² + b²)', 5],
    [power(sum('a', 1), 2), '(a + 1)²', 16],
    [negative(sum('a', 1)), '− (a + 1)', -4],
    [exp(negative(fraction('a', 'b'))), 'e^(− a / b)', Math.exp(-0.75)],
    [ln('b'), 'ln(b)', Math.log(4)],
  ])('%#: is drawn with the brackets it needs, and evaluates', (formula, shown, value) => {
    expect(text(formula).replace(/\s+/g, ' ').trim()).toBe(shown);
    expect(evaluateFormula(formula, values)).toBeCloseTo(value, 12);
  });

  it('reads entries of a list by path', () => {
    expect(evaluateFormula(sum('list.0.x', 'list.1.x'), values)).toBe(17);
  });

  it('refuses a quantity that is not there, by name', () => {
    expect(() => evaluateFormula(sum('a', 'list.2.x'), values)).toThrow(
      /list\.2\.x: expected a finite number/,
    );
  });

  it('keeps both sides of an equation apart', () => {
    const { left, right } = equation('a', difference('b', 1));
    expect(evaluateFormula(left, values)).toBe(evaluateFormula(right, values));
  });

  it('sets a number below a letter as a number, a word as upright text', () => {
    expect(symbolTree('S_2').children?.[1]?.tag).toBe('mn');
    expect(symbolTree('I_load').children?.[1]?.tag).toBe('mtext');
  });
});
