/**
 * The pictures of the README, taken from the built site: `npm run screens`.
 */
import { mkdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from '@playwright/test';
import { serve } from '../../src/terminal/serve.ts';
import { BROWSER_ARGS, ensureBrowser } from './find-browser.ts';

const folder = fileURLToPath(new URL('../../public/screens', import.meta.url));
await mkdir(folder, { recursive: true });
const site = await serve({ root: fileURLToPath(new URL('../../dist', import.meta.url)) });
const browser = await chromium.launch({ executablePath: ensureBrowser(), args: BROWSER_ARGS });

async function open(path: string, colorScheme: 'light' | 'dark', width = 1100): Promise<Page> {
  const page = await browser.newPage({
    viewport: { width, height: 820 },
    colorScheme,
    reducedMotion: 'reduce',
  });
  await page.goto(new URL(path, site.address).href, { waitUntil: 'networkidle' });
  return page;
}

/** An explorer in its lesson. */
async function lesson(): Promise<void> {
  const page = await open('/lessons/overload-levels/minutes-and-heat/', 'light');
  const explorer = page.locator('[data-explorer]').first();
  await explorer.scrollIntoViewIfNeeded();
  await page.locator('[data-explorer][data-awake]').first().waitFor();
  await page.evaluate(() => document.querySelector('[data-explorer]')?.scrollIntoView({ block: 'start' }));
  await page.screenshot({ path: `${folder}/lesson.png` });
}

/** A sheet with one step wrong, one that follows from it, and the slip named. */
async function exercise(): Promise<void> {
  const page = await open('/exercises/pump-house-pump/?seed=7', 'light');
  const check = page.getByRole('button', { name: 'Check my working' });
  await check.and(page.locator(':enabled')).waitFor();
  const [watts = ''] = (await page.locator('.ws-given td').first().innerText()).split(/\s*kW/);
  await page.locator('[data-step="apparentPowerVa"] input').fill(`${watts} kVA`);
  await page.locator('[data-step="currentA"] input').fill(`${((Number(watts) * 1000) / 230).toFixed(2)} A`);
  await check.click();
  await page.getByRole('button', { name: 'Show the worked solution' }).click();
  await page.evaluate(() => document.querySelector('.ws-steps')?.scrollIntoView({ block: 'start' }));
  await page.screenshot({ path: `${folder}/exercise.png` });
}

/** The map on a phone, in the dark. */
async function map(): Promise<void> {
  const page = await open('/', 'dark', 380);
  await page.screenshot({ path: `${folder}/map-phone.png` });
}

try {
  await lesson();
  await exercise();
  await map();
} finally {
  await browser.close();
  await site.close();
}
