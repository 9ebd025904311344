import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { sitePaths } from '../support/site-paths.ts';

/** Narrow enough for WCAG 1.4.10 (reflow at 320 CSS pixels). */
test.use({ viewport: { width: 320, height: 640 } });

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const found = ({ violations }: Awaited<ReturnType<AxeBuilder['analyze']>>): string[] =>
  violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`.slice(0, 400));

/**
 * Every page once: it complains of nothing, fits a narrow screen, and passes axe in light and its contrasts in dark. A floor,
 * not a proof: axe finds only part of what can be wrong; keyboard and feedback have tests of their own.
 */
for (const path of sitePaths()) {
  test(path, async ({ page }) => {
    const complaints: string[] = [];
    // Includes every refusal by the Content-Security-Policy.
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    page.on('pageerror', (error) => complaints.push(error.message));
    await page.goto(path);
    await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0);

    // A page leaves text far from the screen undrawn until it is scrolled to; axe is to see what a reader will see there.
    await page.evaluate(() => {
      const drawn = new CSSStyleSheet();
      drawn.replaceSync('* { content-visibility: visible !important; }');
      document.adoptedStyleSheets = [drawn];
    });
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, 'pixels beyond the right edge').toBeLessThanOrEqual(0);
    expect(found(await new AxeBuilder({ page }).withTags(TAGS).analyze())).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    // The new colours are on the screen after the next frame.
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    expect(found(await new AxeBuilder({ page }).withRules(['color-contrast']).analyze())).toEqual([]);
    expect(complaints).toEqual([]);
  });
}
