import { chromium } from '@playwright/test';
import lighthouse from 'lighthouse';
import { serve } from '../../src/terminal/serve.ts';
import { BROWSER_ARGS, ensureBrowser } from '../support/find-browser.ts';
import { sitePaths } from '../support/site-paths.ts';

/**
 * `npm run bench:pages [path …]`: Lighthouse on the built site, simulated mobile. Prints the four scores and the times.
 * Without arguments: one lesson, one exercise, the glossary and the map.
 */
const DEBUGGING_PORT = 9333;
const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'];

function defaultPaths(): string[] {
  const paths = sitePaths();
  const first = (start: string): string[] =>
    paths.filter((path) => path.startsWith(start) && path !== start).slice(0, 1);
  return [...first('/lessons/'), ...first('/exercises/'), '/glossary/', '/'];
}

const site = await serve({ root: 'dist' });
const browser = await chromium.launch({
  executablePath: ensureBrowser(),
  args: [...BROWSER_ARGS, `--remote-debugging-port=${DEBUGGING_PORT}`],
});
const asked = process.argv.slice(2);
try {
  for (const path of asked.length > 0 ? asked : defaultPaths()) {
    const result = await lighthouse(new URL(path, site.address).href, {
      port: DEBUGGING_PORT,
      onlyCategories: CATEGORIES,
      logLevel: 'error',
    });
    if (!result) throw new Error(`${path}: expected a report, found none`);
    const { categories, audits } = result.lhr;
    const scores = CATEGORIES.map((id) => `${id} ${Math.round((categories[id]?.score ?? 0) * 100)}`).join(
      ', ',
    );
    const value = (id: string): string => audits[id]?.displayValue ?? '?';
    console.log(`${path}\n  ${scores}`);
    console.log(
      `  LCP ${value('largest-contentful-paint')}, CLS ${value('cumulative-layout-shift')}, TBT ${value('total-blocking-time')}`,
    );
    for (const audit of Object.values(audits)) {
      const counts = audit.score !== null && audit.score < 1 && audit.scoreDisplayMode === 'binary';
      if (counts) console.log(`  fails: ${audit.id}: ${audit.title}`);
    }
  }
} finally {
  await browser.close();
  await site.close();
}
