import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { sitePaths } from '../support/site-paths.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** A floor, not a proof: axe finds only part of what can be wrong. Keyboard and reading order have tests of their own. */
for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`axe, ${colorScheme}`, () => {
    test.use({ colorScheme });
    for (const path of sitePaths()) {
      test(path, async ({ page }) => {
        const complaints: string[] = [];
        page.on('console', (message) => {
          if (message.type() === 'error') complaints.push(message.text());
        });
        page.on('pageerror', (error) => complaints.push(error.message));
        await page.goto(path, { waitUntil: 'networkidle' });
        const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
        expect(
          violations.map(
            ({ id, nodes }) =>
              `${id}: ${nodes
                .map((node) => node.html)
                .join(' | ')
                .slice(0, 300)}`,
          ),
        ).toEqual([]);
        // Includes every refusal by the Content-Security-Policy.
        expect(complaints).toEqual([]);
      });
    }
  });
}
