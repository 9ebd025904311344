import { defineHastPlugin } from 'satteri';
import { texToMathml } from './tex-to-mathml.ts';

/** Replaces the TeX between dollar signs in a lesson by MathML while the site is built. */
export const mathmlPlugin = defineHastPlugin({
  name: 'mathml',
  element: {
    filter: ['code'],
    visit(node, ctx) {
      const classes = node.properties?.['className'];
      if (!Array.isArray(classes) || !classes.includes('language-math')) return;
      const display = classes.includes('math-display');
      const math = texToMathml(ctx.textContent(node).trim(), display);
      // A display formula arrives as <pre><code>: the whole <pre> has to go, or white space would be kept.
      const parent = ctx.parent(node);
      if (display && parent?.type === 'element' && parent.tagName === 'pre') ctx.replaceNode(parent, math);
      else ctx.replaceNode(node, math);
    },
  },
});
