import type { Formula } from './formula.ts';
import { numberAtPath } from './value-at-path.ts';

/**
 * The number a formula stands for, with quantities read from `values` (SI units throughout).
 *
 * @throws {RangeError} when a quantity is missing.
 */
export function evaluateFormula(formula: Formula, values: Readonly<Record<string, unknown>>): number {
  const of = (inner: Formula): number => evaluateFormula(inner, values);
  switch (formula.op) {
    case 'quantity':
      return numberAtPath(values, formula.path);
    case 'number':
      return formula.value;
    case 'sum':
      return formula.terms.reduce((total, term) => total + of(term), 0);
    case 'product':
      return formula.terms.reduce((total, term) => total * of(term), 1);
    case 'max':
      return Math.max(...formula.terms.map(of));
    case 'min':
      return Math.min(...formula.terms.map(of));
    case 'difference':
      return of(formula.left) - of(formula.right);
    case 'fraction':
      return of(formula.over) / of(formula.under);
    case 'root':
      return Math.sqrt(of(formula.of));
    case 'negative':
      return -of(formula.of);
    case 'power':
      return of(formula.base) ** formula.exponent;
    case 'exp':
      return Math.exp(of(formula.of));
    case 'ln':
      return Math.log(of(formula.of));
    case 'sin':
      return Math.sin(of(formula.of));
    case 'arccos':
      return Math.acos(of(formula.of));
  }
}
