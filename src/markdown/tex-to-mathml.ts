import type { HastNode } from 'satteri';
import { htmlToHast } from 'satteri';
import temml from 'temml';

/**
 * MathML for a piece of TeX, as a syntax tree without any `style` attribute.
 *
 * The site's policy refuses inline styles, so what Temml says by `style` is said by its classes in `prose.css`.
 * The TeX stays in an `annotation`, where a reader's tools can find and copy it.
 *
 * @throws {Error} the TeX cannot be parsed; the message holds the TeX
 */
export function texToMathml(tex: string, display: boolean): HastNode {
  let html: string;
  try {
    html = temml.renderToString(tex, { displayMode: display, annotate: true, throwOnError: true });
  } catch (cause) {
    throw new Error(`formula: expected TeX that can be set, found «${tex}»`, { cause });
  }
  const tree = htmlToHast(html, { fragment: true });
  const math = 'children' in tree ? tree.children[0] : undefined;
  if (math === undefined) throw new Error(`formula: expected TeX that gives a formula, found «${tex}»`);
  const plain = withoutStyle(math as HastNode);
  // A displayed formula wider than a phone scrolls in its own box, which must be reachable by keyboard (WCAG 2.1.1).
  if (display && plain.type === 'element')
    return { ...plain, properties: { ...plain.properties, tabIndex: 0 } };
  return plain;
}

function withoutStyle(node: HastNode): HastNode {
  if (node.type !== 'element') return node;
  const { style: _style, ...properties } = node.properties ?? {};
  return {
    ...node,
    properties,
    children: node.children.map((child) => withoutStyle(child as HastNode)),
  } as HastNode;
}
