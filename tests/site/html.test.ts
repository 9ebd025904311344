import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { sitePaths } from '../support/site-paths.ts';

const validator = new HtmlValidate({
  extends: ['html-validate:recommended'],
  rules: {
    // Matters of writing style that the site's tools decide.
    'void-style': 'off',
    'doctype-style': 'off',
    'no-trailing-whitespace': 'off',
    'attribute-boolean-style': 'off',
    'attribute-empty-style': 'off',
    'long-title': 'off',
    'no-raw-characters': 'off',
    // The search box is a combobox with a list of its own, as the ARIA practices describe it; a native select cannot search.
    'prefer-native-element': ['error', { exclude: ['listbox'] }],
  },
});

describe('the HTML of every page', () => {
  it.each(sitePaths())('%s is valid', async (path) => {
    const html = readFileSync(join('dist', path, path.endsWith('/') ? 'index.html' : ''), 'utf8');
    const { results } = await validator.validateString(html);
    const complaints = results.flatMap(({ messages }) =>
      // Astro puts the one style of its islands beside the first island, inside the body; browsers take it there.
      messages
        .filter(({ message }) => !message.startsWith('<style> element is not permitted'))
        .map(({ ruleId, message, line, column }) => `${ruleId}: ${message} (${line}:${column})`),
    );
    expect([...new Set(complaints)]).toEqual([]);
  });
});
