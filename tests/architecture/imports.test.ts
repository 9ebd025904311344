import { describe, expect, it } from 'vitest';
import { importsOf, type SourceFile, sourceFiles } from '../support/source-files.ts';

const files = sourceFiles('src').filter(({ path }) => !path.endsWith('.test.ts'));

/** Rooms of src, each with the rooms it may import from besides itself. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  engine: [],
  course: ['engine'],
  markdown: [],
  'content-reader': ['course', 'engine'],
  widgets: ['course', 'engine', 'content-reader'],
  components: ['widgets', 'course', 'engine', 'content-reader'],
  layouts: ['components', 'widgets', 'course', 'engine', 'styles'],
  pages: ['layouts', 'components', 'widgets', 'course', 'engine', 'content-reader', 'styles'],
  terminal: ['widgets', 'content-reader', 'course', 'engine'],
};

const roomOf = (path: string): string => path.split('/')[1] ?? '';
const isOwn = (target: string): boolean => target.startsWith('src/');
const isPackage = (target: string): boolean =>
  !/^(src|content|tests|public)\//.test(target) && !target.startsWith('.');
const importLines = (wanted: readonly SourceFile[]): { path: string; target: string }[] =>
  wanted.flatMap((file) => importsOf(file).map((target) => ({ path: file.path, target })));
const inRoom = (...rooms: string[]): SourceFile[] => files.filter(({ path }) => rooms.includes(roomOf(path)));

describe('imports', () => {
  it('run in one direction: pages → layouts → components, widgets → course → engine', () => {
    const wrong = importLines(files).filter(({ path, target }) => {
      const [from, to] = [roomOf(path), roomOf(target)];
      if (!isOwn(target) || from === to || !(from in MAY_IMPORT)) return false;
      // Style sheets are loaded by whoever draws with them.
      if (to === 'styles') return !['layouts', 'pages', 'components'].includes(from);
      return !MAY_IMPORT[from]?.includes(to);
    });
    expect(wrong).toEqual([]);
  });

  it('bring the content reader into widgets as types only: it reads files, a browser has none', () => {
    const wrong = inRoom('widgets').filter(({ text }) => /import (?!type)[^;]*content-reader/.test(text));
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });

  it('leave the engine without any package', () => {
    expect(importLines(inRoom('engine')).filter(({ target }) => isPackage(target))).toEqual([]);
  });

  it('leave the course without Astro, Preact, Chart.js or Node', () => {
    const forbidden = /^(astro|preact|@preact|@astrojs|chart\.js|node:)/;
    expect(importLines(inRoom('course')).filter(({ target }) => forbidden.test(target))).toEqual([]);
  });

  it('keep Chart.js inside widgets/shared/chart, and storage inside widgets/shared/progress', () => {
    const charts = importLines(files).filter(
      ({ path, target }) => target.startsWith('chart.js') && !path.startsWith('src/widgets/shared/chart/'),
    );
    expect(charts).toEqual([]);
    const storage = files.filter(
      ({ path, text }) =>
        /\b(indexedDB|sessionStorage)\b/.test(withoutComments(text)) &&
        !path.startsWith('src/widgets/shared/progress/'),
    );
    expect(storage.map(({ path }) => path)).toEqual([]);
  });

  it('form no cycle inside engine and course', () => {
    const graph = new Map(
      inRoom('engine', 'course').map((file) => [
        file.path,
        importsOf(file).filter((target) => isOwn(target)),
      ]),
    );
    expect(findCycle(graph)).toBeNull();
  });

  it('name files that exist, with their ending', () => {
    const known = new Set(sourceFiles('src').map(({ path }) => path));
    const lost = importLines(files).filter(
      ({ target }) => isOwn(target) && /\.(ts|tsx|astro)$/.test(target) && !known.has(target),
    );
    expect(lost).toEqual([]);
  });
});

const withoutComments = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\/\/.*$/gm, '');

function findCycle(graph: ReadonlyMap<string, readonly string[]>): string[] | null {
  const done = new Set<string>();
  const walk = (path: string, trail: readonly string[]): string[] | null => {
    if (trail.includes(path)) return [...trail.slice(trail.indexOf(path)), path];
    if (done.has(path)) return null;
    for (const target of graph.get(path) ?? []) {
      const cycle = walk(target, [...trail, path]);
      if (cycle) return cycle;
    }
    done.add(path);
    return null;
  };
  for (const path of graph.keys()) {
    const cycle = walk(path, []);
    if (cycle) return cycle;
  }
  return null;
}
