import { readdirSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, it } from 'vitest';
import { codeLines, sourceFiles } from '../support/source-files.ts';

const MAX_CODE_LINES = 250;
const files = sourceFiles('src');

describe('files', () => {
  it('stay within 250 lines of code; tables may be longer', () => {
    const long = [...files, ...sourceFiles('tests')]
      .filter(({ path }) => !path.includes('/tables/') && !path.includes('/rows/'))
      .map(({ path, text }) => ({ path, lines: codeLines(text) }))
      .filter(({ lines }) => lines > MAX_CODE_LINES);
    expect(long).toEqual([]);
  });

  it('are named in kebab-case, components in PascalCase, pages as their address', () => {
    const wrong = files
      .map(({ path }) => path)
      .filter((path) => !path.startsWith('src/pages/') && path !== 'src/content.config.ts')
      .filter((path) => {
        const name = basename(path).replace(/\.(test|d)?\.?(tsx?|astro)$/, '');
        const isComponent = /\.(tsx|astro)$/.test(path);
        return !(isComponent ? /^[A-Z][A-Za-z0-9]*$/ : /^[a-z0-9]+(-[a-z0-9]+)*$/).test(name);
      });
    expect(wrong).toEqual([]);
  });

  it('live in rooms with a meaning: no utils, helpers, common or misc', () => {
    const vague = files.filter(({ path }) => /\/(utils?|helpers?|common|misc)(\/|\.)/.test(path));
    expect(vague.map(({ path }) => path)).toEqual([]);
  });

  it('leave only what a tool insists on at the root', () => {
    const allowed = new Set([
      ...['README.md', 'DEVELOPERS.md', 'LICENSE', 'LICENSE-CONTENT', 'package.json', 'package-lock.json'],
      ...['astro.config.mjs', 'tsconfig.json', 'biome.json', '.gitignore', '.npmrc', '.ci', '.git'],
      ...['src', 'content', 'tests', 'public'],
      // Made by tools, never committed.
      ...['node_modules', 'dist', '.astro', 'test-results', 'reports', '.stryker-tmp'],
    ]);
    expect(readdirSync('.').filter((name) => !allowed.has(name))).toEqual([]);
  });
});
