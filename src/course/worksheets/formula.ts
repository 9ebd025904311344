/**
 * A formula as data. The same object is shown (MathML on the page, plain text in the terminal), filled with numbers,
 * and evaluated by a test against the engine call it stands beside, so the explanation cannot disagree with the answer.
 *
 * A quantity is named by its path in the worksheet's values: `voltageV`, or `loads.0.apparentPowerVa` for a list.
 */
export type Formula =
  | { op: 'quantity'; path: string }
  | { op: 'number'; value: number }
  | { op: 'sum' | 'product' | 'max' | 'min'; terms: readonly Formula[] }
  | { op: 'difference'; left: Formula; right: Formula }
  | { op: 'fraction'; over: Formula; under: Formula }
  | { op: 'root' | 'negative'; of: Formula }
  | { op: 'power'; base: Formula; exponent: number }
  | { op: 'exp' | 'ln' | 'sin' | 'arccos'; of: Formula };

/** `a` and `b` agree once the step's value is put in: shown for values that only a solver finds. */
export interface Equation {
  op: 'equation';
  left: Formula;
  right: Formula;
}

type Term = Formula | string | number;

const asFormula = (term: Term): Formula => {
  if (typeof term === 'string') return { op: 'quantity', path: term };
  if (typeof term === 'number') return { op: 'number', value: term };
  return term;
};

export const sum = (...terms: Term[]): Formula => ({ op: 'sum', terms: terms.map(asFormula) });
export const product = (...terms: Term[]): Formula => ({ op: 'product', terms: terms.map(asFormula) });
export const largest = (...terms: Term[]): Formula => ({ op: 'max', terms: terms.map(asFormula) });
export const smallest = (...terms: Term[]): Formula => ({ op: 'min', terms: terms.map(asFormula) });
export const quantity = (path: string): Formula => ({ op: 'quantity', path });
export const fraction = (over: Term, under: Term): Formula => ({
  op: 'fraction',
  over: asFormula(over),
  under: asFormula(under),
});
export const difference = (left: Term, right: Term): Formula => ({
  op: 'difference',
  left: asFormula(left),
  right: asFormula(right),
});
export const root = (of: Term): Formula => ({ op: 'root', of: asFormula(of) });
export const negative = (of: Term): Formula => ({ op: 'negative', of: asFormula(of) });
export const power = (base: Term, exponent: number): Formula => ({
  op: 'power',
  base: asFormula(base),
  exponent,
});
export const exp = (of: Term): Formula => ({ op: 'exp', of: asFormula(of) });
export const ln = (of: Term): Formula => ({ op: 'ln', of: asFormula(of) });
export const sin = (of: Term): Formula => ({ op: 'sin', of: asFormula(of) });
export const arccos = (of: Term): Formula => ({ op: 'arccos', of: asFormula(of) });
export const equation = (left: Term, right: Term): Equation => ({
  op: 'equation',
  left: asFormula(left),
  right: asFormula(right),
});
