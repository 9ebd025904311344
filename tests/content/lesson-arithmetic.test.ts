import { describe, expect, it } from 'vitest';
import { lessonFiles } from '../support/lesson-files.ts';

/** The calculations printed in a lesson: every formula, taken apart at its equals signs. */
const formulasOf = (body: string): string[][] =>
  [...body.matchAll(/\$\$([\s\S]+?)\$\$|\$([^$\n]+)\$/g)].flatMap(([, display, inline]) =>
    (display ?? inline ?? '')
      .split(/\\qquad/)
      .map((formula) => formula.split('=').map((part) => part.trim())),
  );

/** A printed expression in numbers alone as a sum to do; null when it holds a letter. */
function resultOf(tex: string): number | null {
  const group = String.raw`\{((?:[^{}]|\{[^{}]*\})*)\}`;
  const code = tex
    .replace(/\\,?\\mathrm\{[^{}]*\}|\\,|\\%/g, '')
    .replace(new RegExp(String.raw`\\frac${group}${group}`, 'g'), '(($1)/($2))')
    .replace(new RegExp(String.raw`\\sqrt${group}`, 'g'), 'Math.sqrt($1)')
    .replace(/\\ln\s*(\(\(.*\)\/\(.*\)\)|[\d.]+)/g, 'Math.log($1)')
    .replace(new RegExp(String.raw`\be\^${group}`, 'g'), 'Math.exp($1)')
    .replace(/\^\{?(\d)\}?/g, '**$1')
    .replaceAll(String.raw`\cdot`, '*')
    .replaceAll('−', '-');
  if (!/\d/.test(code) || /[^\d\s.+\-*/()]/.test(code.replace(/Math\.(sqrt|log|exp)/g, ''))) return null;
  return new Function(`"use strict"; return (${code});`)() as number;
}

/** Half of the last digit that counts: the last decimal, or of a round number the first that is not nought. */
function halfLastDigit(printed: string): number {
  const decimals = printed.split('.')[1];
  if (decimals !== undefined) return 0.5 * 10 ** -decimals.length;
  return 0.5 * 10 ** (/0*$/.exec(printed)?.[0].length ?? 0);
}

/** "0.488 · 1.393 = 0.679" is a fault: whoever does the sum with the printed figures must get the printed result. */
function faultsOf(formula: readonly string[]): string[] {
  return formula.slice(1).flatMap((right, i) => {
    const [sum, result] = [resultOf(formula[i] ?? ''), resultOf(right)];
    const digits = /^[\d.]+/.exec(right)?.[0] ?? '';
    if (sum === null || result === null) return [];
    // Where the right side is itself a sum of rounded figures, its own result says how much rounding may do.
    const room = Number(digits) === result ? halfLastDigit(digits) : Math.abs(result) * 0.01;
    return Math.abs(sum - result) <= room * (1 + 1e-9)
      ? []
      : [`${formula[i]} = ${right}: the sum gives ${sum}`];
  });
}

describe('the sums printed in lessons', () => {
  const formulas = lessonFiles().map(({ path, body }) => [path, formulasOf(body)] as const);

  it.each(formulas)('%s: come out as printed', (_, all) => {
    expect(all.flatMap(faultsOf)).toEqual([]);
  });

  it('are read, not skipped', () => {
    const sums = formulas.flatMap(([, all]) =>
      all.filter((formula) =>
        formula.slice(1).some((right, i) => resultOf(right) !== null && resultOf(formula[i] ?? '') !== null),
      ),
    );
    expect(sums.length).toBeGreaterThan(40);
    expect(faultsOf(['0.488 \\cdot 1.393', '0.679'])).toHaveLength(1);
    expect(faultsOf(['\\frac{6100\\,\\mathrm{VA}}{230\\,\\mathrm{V}}', '26.5\\,\\mathrm{A}'])).toEqual([]);
    expect(faultsOf(['70 \\cdot \\ln \\frac{0.713 - 0.037}{0.713 - 0.320}', '39'])).toHaveLength(1);
  });
});
