import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sitePaths } from '../support/site-paths.ts';

const pages = sitePaths().map((path) => ({
  path,
  html: readFileSync(join('dist', path, path.endsWith('/') ? 'index.html' : ''), 'utf8'),
}));

describe('the policy of every page', () => {
  it.each(pages.map(({ path, html }) => [path, html] as const))(
    '%s: strict, Trusted Types, no inline style',
    (_, html) => {
      const policy = html.match(/http-equiv="content-security-policy" content="([^"]+)"/)?.[1] ?? '';
      for (const directive of [
        "default-src 'self'",
        "base-uri 'none'",
        "object-src 'none'",
        "form-action 'self'",
        "require-trusted-types-for 'script'",
      ]) {
        expect(policy).toContain(directive);
      }
      expect(policy).not.toMatch(/unsafe-inline|unsafe-eval|\*/);
      expect(html).not.toMatch(/<[^>]+\sstyle="/);
      expect(html).not.toMatch(/<[^>]+\son[a-z]+="/);
    },
  );
});
