import { expect, test } from '@playwright/test';
import { sitePaths } from '../support/site-paths.ts';

test.use({ viewport: { width: 320, height: 640 } });

/** WCAG 1.4.10: at 320 px nothing but a table or chart in its own scroller may run off the side. */
for (const path of sitePaths()) {
  test(`${path} fits a narrow screen`, async ({ page }) => {
    await page.goto(path, { waitUntil: 'networkidle' });
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBeLessThanOrEqual(0);
  });
}
