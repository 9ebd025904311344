/** MathML as plain data, so that a page can create elements from it without ever parsing markup. */
export interface MathNode {
  tag: 'math' | 'mrow' | 'mi' | 'mn' | 'mo' | 'mtext' | 'mfrac' | 'msub' | 'msup' | 'msqrt' | 'mspace';
  text?: string;
  attributes?: Readonly<Record<string, string>>;
  children?: readonly MathNode[];
}

export const mi = (text: string): MathNode => ({ tag: 'mi', text });
export const mn = (text: string): MathNode => ({ tag: 'mn', text });
export const mo = (text: string): MathNode => ({ tag: 'mo', text });
export const mtext = (text: string): MathNode => ({ tag: 'mtext', text });
export const row = (...children: MathNode[]): MathNode => ({ tag: 'mrow', children });

/** A subscript of one or two letters is set as an identifier, anything longer as upright text. */
export const symbolTree = (symbol: string): MathNode => {
  const [letter = '', subscript] = symbol.split('_');
  const base = mi(letter);
  if (!subscript) return base;
  return { tag: 'msub', children: [base, /^\d+$/.test(subscript) ? mn(subscript) : mtext(subscript)] };
};
