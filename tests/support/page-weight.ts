import { readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { brotliCompressSync } from 'node:zlib';

const ROOT = 'dist';

/** Size as the site is served: brotli at its best level. */
export function brotliBytes(file: string): number {
  const known = sizes.get(file) ?? brotliCompressSync(readFileSync(file)).length;
  sizes.set(file, known);
  return known;
}

const sizes = new Map<string, number>();

export interface PageWeight {
  bytes: number;
  files: string[];
}

const read = (path: string): string => readFileSync(join(ROOT, path), 'utf8');

/** A script with everything it imports statically. */
export function scriptClosure(paths: readonly string[], followDynamic = false): Set<string> {
  const seen = new Set<string>();
  const waiting = [...paths];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (seen.has(path)) continue;
    seen.add(path);
    const text = read(path);
    const imports = [
      ...[...text.matchAll(/(?:\bfrom\s*|\bimport\s*)["'](\.[^"']+\.js)["']/g)].map(
        (match) => match[1] ?? '',
      ),
      ...(followDynamic
        ? [...text.matchAll(/import\(\s*["'`](\.[^"'`]+\.js)["'`]/g)].map((match) => match[1] ?? '')
        : []),
    ];
    for (const target of imports) waiting.push(posix.join(dirname(path), target));
  }
  return seen;
}

/**
 * What a page needs before a reader does anything: its HTML (style sheets are inside), linked style sheets and module
 * scripts with all they import. Islands that load at once count in full. Fonts are apart.
 */
export function eagerWeight(page: string): PageWeight {
  const html = read(page);
  const attribute = (pattern: RegExp): string[] => [...html.matchAll(pattern)].map((match) => match[1] ?? '');
  const scripts = [
    ...attribute(/<script[^>]+type="module"[^>]+src="([^"]+)"/g),
    ...attribute(/<astro-island[^>]+component-url="([^"]+)"/g),
    ...attribute(/<astro-island[^>]+renderer-url="([^"]+)"/g),
  ];
  const inline = [...html.matchAll(/<script type="module">([\s\S]*?)<\/script>/g)].flatMap((match) =>
    [...(match[1] ?? '').matchAll(/["'](\/assets\/[^"']+\.js)["']/g)].map((found) => found[1] ?? ''),
  );
  const sheets = attribute(/<link[^>]+rel="stylesheet"[^>]+href="([^"]+)"/g);
  const files = [page, ...sheets, ...scriptClosure([...scripts, ...inline])];
  const unique = [...new Set(files)];
  return { bytes: unique.reduce((total, file) => total + brotliBytes(join(ROOT, file)), 0), files: unique };
}
