import { readdirSync } from 'node:fs';

/** The address of every page in the built site. */
export function sitePaths(root = 'dist'): string[] {
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => name.endsWith('.html'))
    .map((name) => `/${name.replace(/index\.html$/, '')}`)
    .sort();
}
