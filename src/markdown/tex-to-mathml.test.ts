import { expect, test } from 'vitest';
import { texToMathml } from './tex-to-mathml.ts';

test('gives MathML that keeps its TeX and has no style attribute anywhere', () => {
  const tree = JSON.stringify(
    texToMathml('I = \\begin{aligned} a &= \\frac{S}{U} \\\\ b &= 1\\end{aligned}', true),
  );
  expect(tree).toContain('"tagName":"math"');
  expect(tree).toContain('"tagName":"annotation"');
  expect(tree).toContain('\\\\frac{S}{U}');
  expect(tree).not.toContain('"style"');
});

test('names the formula that cannot be set', () => {
  expect(() => texToMathml('\\frac{a}{', false)).toThrow('\\frac{a}{');
});
