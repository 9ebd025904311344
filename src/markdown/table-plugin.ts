import { defineHastPlugin } from 'satteri';

/**
 * Puts each table of a lesson into a box of its own, so that a table wider than a phone scrolls there and the page stays still.
 * The box takes the keyboard's focus (WCAG 2.1.1); the table itself keeps its meaning for screen readers.
 */
export const tablePlugin = defineHastPlugin({
  name: 'table-box',
  element: {
    filter: ['table'],
    visit(node, ctx) {
      const parent = ctx.parent(node);
      if (parent?.type === 'element' && parent.properties?.['dataTableBox'] !== undefined) return;
      ctx.replaceNode(node, {
        type: 'element',
        tagName: 'div',
        properties: {
          className: ['table-scroll'],
          role: 'group',
          ariaLabel: 'Table',
          tabIndex: 0,
          dataTableBox: '',
        },
        children: [node],
      });
    },
  },
});
