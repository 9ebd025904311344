import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sitePaths } from '../support/site-paths.ts';

const ROOT = 'dist';
const fileOf = (path: string): string => join(ROOT, path, path.endsWith('/') ? 'index.html' : '');
const pages = sitePaths(ROOT).map((path) => ({ path, html: readFileSync(fileOf(path), 'utf8') }));
const ids = new Map(
  pages.map(({ path, html }) => [
    path,
    new Set([...html.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1])),
  ]),
);

const linksOf = (html: string): string[] =>
  [...html.matchAll(/\s(?:href|src|component-url|renderer-url)="([^"]+)"/g)].map((match) => match[1] ?? '');

describe('links', () => {
  it('all lead to a file of the site, or to an id of its page', () => {
    const lost = pages.flatMap(({ path, html }) =>
      linksOf(html)
        .filter((link) => !/^(mailto:|https:\/\/)/.test(link))
        .filter((link) => {
          const { pathname, hash } = new URL(link.replaceAll('&amp;', '&'), `http://site.invalid${path}`);
          const file = fileOf(decodeURIComponent(pathname));
          if (!existsSync(file) || !statSync(file).isFile()) return true;
          return (
            hash !== '' && ids.has(pathname) && !ids.get(pathname)?.has(decodeURIComponent(hash.slice(1)))
          );
        })
        .map((link) => `${path} → ${link}`),
    );
    expect(lost).toEqual([]);
  });

  it('fetch nothing from anywhere else', () => {
    const foreign = pages.flatMap(({ path, html }) =>
      [
        ...html.matchAll(/\s(?:src|srcset|component-url|renderer-url)="(https?:)?\/\//g),
        ...html.matchAll(/<link[^>]+href="https?:/g),
      ].map((match) => `${path}: ${match[0]}`),
    );
    expect(foreign).toEqual([]);
  });

  it('reach every page from the map', () => {
    const reached = new Set<string>();
    const waiting = ['/'];
    for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
      if (reached.has(path)) continue;
      reached.add(path);
      const html = pages.find((page) => page.path === path)?.html ?? '';
      for (const link of linksOf(html)) waiting.push(new URL(link, `http://site.invalid${path}`).pathname);
    }
    expect(
      pages.map(({ path }) => path).filter((path) => path !== '/404.html' && !reached.has(path)),
    ).toEqual([]);
  });
});
