import type { Formula } from '../worksheets/formula.ts';
import { type MathNode, mi, mn, mo, row } from './math-tree.ts';

/** How a quantity in a formula is to be drawn: as its symbol, or as a number with its unit. */
export type DrawQuantity = (path: string) => MathNode;

const parenthesised = (inner: MathNode): MathNode => row(mo('('), inner, mo(')'));

/** Sums, differences and quotients need brackets when they are multiplied or raised. */
const isCompound = (formula: Formula): boolean => ['sum', 'difference'].includes(formula.op);

const FUNCTION_NAMES = { ln: 'ln', sin: 'sin', arccos: 'arccos', max: 'max', min: 'min' } as const;

const between = (nodes: readonly MathNode[], separator: MathNode): MathNode[] =>
  nodes.flatMap((node, place) => (place === 0 ? [node] : [separator, node]));

/** The formula as MathML data, with each quantity drawn by `draw`. */
export function formulaTree(formula: Formula, draw: DrawQuantity): MathNode {
  const of = (inner: Formula): MathNode => formulaTree(inner, draw);
  const factor = (inner: Formula): MathNode => (isCompound(inner) ? parenthesised(of(inner)) : of(inner));
  switch (formula.op) {
    case 'quantity':
      return draw(formula.path);
    case 'number':
      return mn(String(formula.value).replace('-', '−'));
    case 'sum':
      return row(...between(formula.terms.map(of), mo('+')));
    case 'product':
      return row(...between(formula.terms.map(factor), mo('·')));
    case 'max':
    case 'min':
      return row(
        mi(FUNCTION_NAMES[formula.op]),
        parenthesised(row(...between(formula.terms.map(of), mo(',')))),
      );
    case 'difference':
      return row(of(formula.left), mo('−'), factor(formula.right));
    case 'fraction':
      return { tag: 'mfrac', children: [of(formula.over), of(formula.under)] };
    case 'root':
      return { tag: 'msqrt', children: [of(formula.of)] };
    case 'negative':
      return row(mo('−'), factor(formula.of));
    case 'power': {
      const bare = formula.base.op === 'number';
      return {
        tag: 'msup',
        children: [
          bare ? of(formula.base) : parenthesisedUnlessSymbol(formula.base, of),
          mn(String(formula.exponent)),
        ],
      };
    }
    case 'exp':
      // Written as the trade's books do: e to a power.
      return { tag: 'msup', children: [mi('e'), onOneLine(of(formula.of))] };
    case 'ln':
    case 'sin':
    case 'arccos':
      return row(mi(FUNCTION_NAMES[formula.op]), parenthesised(of(formula.of)));
  }
}

/** `I²` stays bare; `(34.8 A)²` and `(a + b)²` get brackets. */
function parenthesisedUnlessSymbol(base: Formula, of: (formula: Formula) => MathNode): MathNode {
  const node = of(base);
  return node.tag === 'mi' || node.tag === 'msub' ? node : parenthesised(node);
}

/** In an exponent a fraction on two lines would be too small to read: it is written with a stroke. */
function onOneLine(node: MathNode): MathNode {
  const children = node.children?.map(onOneLine);
  if (node.tag !== 'mfrac' || !children) return children ? { ...node, children } : node;
  const [over, under] = children;
  return row(...(over ? [over] : []), mo('/'), ...(under ? [under] : []));
}
