import type { MathNode } from './math-tree.ts';

/** The same MathML data in one line of plain text, for a terminal, a label or a screen reader's fallback. */
export function mathText(node: MathNode): string {
  const parts = (node.children ?? []).map(mathText);
  switch (node.tag) {
    case 'mfrac':
      return `${bracketed(node.children?.[0], parts[0])} / ${bracketed(node.children?.[1], parts[1])}`;
    case 'msqrt':
      return `√(${parts.join('')})`;
    case 'msup':
      return `${parts[0]}${superscript(parts[1] ?? '')}`;
    case 'msub':
      return `${parts[0]}_${parts[1]}`;
    case 'mo':
      return node.text === '(' || node.text === ')' ? node.text : node.text === ',' ? ', ' : ` ${node.text} `;
    case 'mspace':
      return ' ';
    default:
      return node.text ?? parts.join('');
  }
}

function bracketed(node: MathNode | undefined, text = ''): string {
  const isCompound =
    node?.tag === 'mfrac' ||
    node?.children?.some((child) => child.tag === 'mo' && child.text !== '(' && child.text !== ')');
  return isCompound ? `(${text})` : text;
}

const superscript = (text: string): string =>
  ({ '2': '²', '3': '³' })[text] ?? (/^[\w.]+$/.test(text) ? `^${text}` : `^(${text.trim()})`);
