import { h, type VNode } from 'preact';
import type { MathNode } from '../../course/explanation/math-tree.ts';

/** Draws MathML data as elements; no markup is ever parsed, which Trusted Types would refuse. */
export function MathView({ node }: { node: MathNode }): VNode {
  return h(
    node.tag,
    { ...node.attributes },
    node.text ?? node.children?.map((child, place) => <MathView key={place} node={child} />),
  );
}
