import { readdirSync, readFileSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { readExercises } from '../../src/content-reader/read-exercises.ts';
import { brotliBytes, eagerWeight, scriptClosure } from '../support/page-weight.ts';
import { sitePaths } from '../support/site-paths.ts';

const KB = 1000;
const lessons = sitePaths().filter((path) => path.startsWith('/lessons/'));

/** What every page has, exercise or not: the header's scripts and the progress store. It has a budget of its own. */
const isFrame = (file: string): boolean => /\/(frame|progress|SiteHeader)[.]/.test(file);

const sizeOf = (files: readonly string[]): number =>
  files.reduce((total, file) => total + brotliBytes(`dist${file}`), 0);

describe('page budgets (brotli)', () => {
  it.each(lessons)('%s: HTML, CSS and eager scripts within 20 kB and 6 requests', (path) => {
    const { bytes, files } = eagerWeight(`${path}index.html`);
    expect(bytes, files.join('\n')).toBeLessThanOrEqual(20 * KB);
    expect(files.length, files.join('\n')).toBeLessThanOrEqual(6);
  });

  it.each(readExercises().map(({ slug, exercise }) => [slug, exercise.worksheet] as const))(
    'exercise %s: island, Preact, worksheet %s and its engine parts within 35 kB',
    (slug, worksheet) => {
      const eager = eagerWeight(`/exercises/${slug}/index.html`).files.filter((file) => file.endsWith('.js'));
      const chunks = readdirSync('dist/assets');
      const later = [`open-session`, worksheet].map((name) => {
        const chunk = chunks.find((file) => file.startsWith(`${name}.`) && file.endsWith('.js'));
        if (!chunk) throw new Error(`dist/assets: expected a chunk named ${name}.*.js, found none`);
        return `/assets/${chunk}`;
      });
      const files = [...scriptClosure([...eager, ...later])].filter((file) => !isFrame(file));
      const bytes = sizeOf(files);
      expect(bytes, files.join('\n')).toBeLessThanOrEqual(35 * KB);
    },
  );

  it('the header and the progress store, with its signals, within 13 kB', () => {
    const scripts = [
      ...scriptClosure(eagerWeight('/progress/index.html').files.filter((file) => file.endsWith('.js'))),
    ];
    const frame = scripts.filter(isFrame);
    expect(frame.length).toBeGreaterThan(1);
    expect(sizeOf(frame), frame.join('\n')).toBeLessThanOrEqual(13 * KB);
  });

  // Two doors: the engine of current, heat and protection, and the motors. A page fetches only the parts it uses of either.
  it.each(['src/engine/index.ts', 'src/engine/motors/index.ts'])(
    '%s and all behind it within 25 kB',
    async (entry) => {
      const { outputFiles } = await build({
        entryPoints: [entry],
        bundle: true,
        minify: true,
        format: 'esm',
        write: false,
      });
      expect(brotliCompressSync(outputFiles[0]?.contents ?? new Uint8Array()).length).toBeLessThanOrEqual(
        25 * KB,
      );
    },
  );

  it('keeps Chart.js out of everything eager', () => {
    const eager = new Set(
      sitePaths().flatMap((path) => eagerWeight(path.endsWith('/') ? `${path}index.html` : path).files),
    );
    const withChart = [...eager].filter(
      (file) => file.endsWith('.js') && /Chart\b.*decimation/s.test(readFileSync(`dist${file}`, 'utf8')),
    );
    expect(withChart).toEqual([]);
  });

  it('the math font within 30 kB', () => {
    for (const file of readdirSync('dist/fonts').filter((name) => name.endsWith('.woff2'))) {
      expect(readFileSync(`dist/fonts/${file}`).length).toBeLessThanOrEqual(30 * KB);
    }
  });
});
