/**
 * Pictures of pages to look at: phone and desktop, light and dark, and the printed page.
 * `node tests/support/screenshots.ts [folder] [path …]`, for the site in dist.
 */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { serve } from '../../src/terminal/serve.ts';
import { BROWSER_ARGS, ensureBrowser } from './find-browser.ts';

const executablePath = ensureBrowser();
const args = [...BROWSER_ARGS];
const screens = [
  { name: 'phone', viewport: { width: 360, height: 740 } },
  { name: 'desktop', viewport: { width: 1280, height: 900 } },
] as const;
const pdftoppm = '/usr/bin/pdftoppm';

const [folder = 'test-results/screens', ...given] = process.argv.slice(2);
const paths = given.length > 0 ? given : ['/', '/lessons/overload-levels/three-levels/', '/glossary/'];
const root = process.env['SITE'] ?? fileURLToPath(new URL('../../dist', import.meta.url));

await mkdir(folder, { recursive: true });
const site = await serve({ root });
const browser = await chromium.launch({ executablePath, args });
try {
  for (const path of paths) {
    const stem =
      path
        .replace(/^\/|\/$/g, '')
        .replaceAll('/', '-')
        .replace(/[^\w.-]/g, '_') || 'map';
    for (const { name, viewport } of screens) {
      for (const colorScheme of ['light', 'dark'] as const) {
        const page = await browser.newPage({ viewport, colorScheme, reducedMotion: 'reduce' });
        page.on('console', (message) => {
          if (message.type() === 'error' || message.type() === 'warning')
            console.log(`${path}: ${message.text()}`);
        });
        page.on('pageerror', (error) => console.log(`${path}: ${error.message}`));
        await page.goto(new URL(path, site.address).href, { waitUntil: 'networkidle' });
        const overflow = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        if (overflow > 0) console.log(`${path}: ${overflow} px wider than a ${name} screen`);
        await page.screenshot({ path: join(folder, `${stem}-${name}-${colorScheme}.png`), fullPage: true });
        await page.close();
      }
    }
    await print(path, join(folder, `${stem}-print`));
  }
} finally {
  await browser.close();
  await site.close();
}

/** The printed page: as a PDF turned into pictures, or as the browser draws it for paper where the tool is missing. */
async function print(path: string, stem: string): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 794, height: 1123 } });
  await page.goto(new URL(path, site.address).href, { waitUntil: 'networkidle' });
  if (existsSync(pdftoppm)) {
    await page.pdf({ path: `${stem}.pdf`, format: 'A4', preferCSSPageSize: true });
    execFileSync(pdftoppm, ['-r', '70', '-png', `${stem}.pdf`, stem]);
    await rm(`${stem}.pdf`);
  } else {
    await page.emulateMedia({ media: 'print' });
    await page.screenshot({ path: `${stem}.png`, fullPage: true });
  }
  await page.close();
}
