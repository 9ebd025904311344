import { describe, expect, it } from 'vitest';
import * as core from '../../src/engine/index.ts';
import * as motors from '../../src/engine/motors/index.ts';
import { sourceFiles } from '../support/source-files.ts';

/** The engine's two public doors. */
const engine = { ...core, ...motors };

interface Documented {
  path: string;
  name: string;
  doc: string;
  parameters: string;
}

/** A doc block, if there is one, and the function or arrow function it stands above. */
const DECLARATION =
  /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\s*)?export (?:function |const )(\w+)(?:<[^(]*>)?(?: = (?:<[^(]*>)?)?\(([^)]*)\)/g;

const publicNames = new Set(
  Object.entries(engine).flatMap(([name, value]) => (typeof value === 'function' ? [name] : [])),
);

const functions: Documented[] = sourceFiles('src/engine')
  .filter(({ path }) => !path.endsWith('.test.ts'))
  .flatMap(({ path, text }) =>
    [...text.matchAll(DECLARATION)].map((match) => ({
      path,
      name: match[2] ?? '',
      doc: match[1] ?? '',
      parameters: match[3] ?? '',
    })),
  )
  .filter(({ name }) => publicNames.has(name));

/** `expression → value`, as a reader would try it. */
const examplesIn = (doc: string): { expression: string; shown: string }[] =>
  [...doc.matchAll(/\*\s+Example:\s+(.+?)\s+→\s+(.+?)\s*$/gm)].map((match) => ({
    expression: match[1] ?? '',
    shown: match[2] ?? '',
  }));

function run(expression: string): unknown {
  return new Function(...Object.keys(engine), `"use strict"; return (${expression});`)(
    ...Object.values(engine),
  );
}

describe('the doc block of every public engine function', () => {
  it('exists for each function the engine exports', () => {
    expect([...publicNames].filter((name) => !functions.some((one) => one.name === name))).toEqual([]);
    expect(functions.length).toBeGreaterThan(20);
  });

  it.each(functions.map((one) => [one.name, one] as const))(
    '%s: has @returns, a source, and an example',
    (_, { doc, parameters }) => {
      expect(doc).toMatch(/@returns/);
      expect(doc).toMatch(/Source:/);
      if (parameters.trim() !== '') expect(doc).toMatch(/@param/);
      expect(examplesIn(doc).length).toBeGreaterThan(0);
    },
  );

  it.each(
    functions.flatMap(({ name, doc }) =>
      examplesIn(doc).map(({ expression, shown }) => [name, expression, shown] as const),
    ),
  )('%s: %s → %s', (_, expression, shown) => {
    const found = run(expression);
    if (typeof found === 'number' && /^[−-]?[\d.]+(e[−-]?\d+)?$/.test(shown)) {
      const printed = shown.replace('−', '-');
      const decimals = printed.split('.')[1]?.length ?? 0;
      expect(found.toFixed(decimals)).toBe(Number(printed).toFixed(decimals));
      return;
    }
    const plain = (value: unknown): string => String(value).replaceAll('\u202f', ' ');
    expect(plain(found)).toBe(plain(/^['"`]/.test(shown) ? run(shown) : shown));
  });
});
