import { h, type VNode } from 'preact';
import type { MathNode } from '../../course/explanation/math-tree.ts';

/** Draws MathML data as elements; no markup is ever parsed, which Trusted Types would refuse. */
export function MathView({ node }: { node: MathNode }): VNode {
  // A displayed formula wider than a phone scrolls in its own box, which must be reachable by keyboard (WCAG 2.1.1).
  const reach = node.attributes?.['display'] === 'block' ? { tabIndex: 0 } : {};
  return h(
    node.tag,
    { ...node.attributes, ...reach },
    node.text ?? node.children?.map((child, place) => <MathView key={place} node={child} />),
  );
}
