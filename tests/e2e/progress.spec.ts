import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { answerKey, fillSheet, openExercise } from '../support/exercise-page.ts';

const SLUG = 'pump-house-pump';
const TITLE = 'What the well pump really draws';

async function earnFullMarks(page: Page, seed = 7): Promise<void> {
  await openExercise(page, SLUG, seed);
  await fillSheet(page, await answerKey(SLUG, seed));
  await page.getByRole('button', { name: 'Check my working' }).click();
  await expect(page.locator('.ws-score')).toContainText('2 of 2 steps');
}

const scoreRow = (page: Page) => page.getByRole('row').filter({ hasText: TITLE });

test('shows a marked attempt on the progress page, also after a reload', async ({ page }) => {
  await earnFullMarks(page);
  await page.goto('/progress/');
  await expect(scoreRow(page)).toContainText('100 %');
  await page.reload();
  await expect(scoreRow(page)).toContainText('100 %');
  await expect(page.locator('.progress-state')).toContainText('Saved on this device');
});

test('tells a second tab of the same device', async ({ page, context }) => {
  const other = await context.newPage();
  await other.goto('/progress/');
  await expect(other.locator('.progress-state')).toContainText('Saved on this device');
  await earnFullMarks(page);
  await expect(scoreRow(other)).toContainText('100 %');
});

test('takes progress along as a file and brings it back on a clean device', async ({ page, browser }) => {
  await earnFullMarks(page);
  await page.goto('/progress/');
  await expect(scoreRow(page)).toBeVisible();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download my progress file' }).click(),
  ]);
  const file = await download.path();
  const clean = await (await browser.newContext()).newPage();
  await clean.goto('/progress/');
  await clean.getByLabel('Load a progress file').setInputFiles(file);
  await expect(clean.getByText('The file was added to your progress')).toBeVisible();
  await expect(scoreRow(clean)).toContainText('100 %');

  // A damaged file changes nothing and says what to do.
  const damaged = readFileSync(file, 'utf8').replace(/"earned":\s*1/, '"earned":9');
  await clean.getByLabel('Load a progress file').setInputFiles({
    name: 'headroom-progress.json',
    mimeType: 'application/json',
    buffer: Buffer.from(damaged),
  });
  await expect(clean.getByText('nothing was taken from it')).toBeVisible();
  await expect(scoreRow(clean)).toContainText('100 %');
  await clean.context().close();
});

test('clears only after a second, different press', async ({ page }) => {
  await earnFullMarks(page);
  await page.goto('/progress/');
  await expect(scoreRow(page)).toBeVisible();
  await page.getByRole('button', { name: 'Clear everything …' }).click();
  await page.getByRole('button', { name: 'Keep it' }).click();
  await expect(scoreRow(page)).toBeVisible();
  await page.getByRole('button', { name: 'Clear everything …' }).click();
  await page.getByRole('button', { name: 'Clear everything', exact: true }).click();
  await expect(scoreRow(page)).toHaveCount(0);
});

test('says "not saved" where the browser stores nothing, keeps marking, and offers the file', async ({
  page,
}) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('storage is off', 'SecurityError');
      },
    });
  });
  await earnFullMarks(page);
  await expect(page.locator('[data-save-state]')).toContainText('Not saved');
  await page.locator('[data-save-state] a').click();
  await expect(page.locator('.progress-state')).toContainText('Not saved yet');
  await expect(page.getByRole('button', { name: 'Download my progress file' })).toBeEnabled();
});

test('keeps a damaged record aside and goes on', async ({ page }) => {
  await earnFullMarks(page);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('headroom');
        opening.onsuccess = () => {
          const rows = opening.result.transaction('attempts', 'readwrite').objectStore('attempts');
          const reading = rows.openCursor();
          reading.onsuccess = () => {
            reading.result?.update({ ...reading.result.value, body: '{"id": "broken' });
            opening.result.close();
            resolve();
          };
        };
        opening.onerror = () => reject(opening.error);
      }),
  );
  await page.goto('/progress/');
  await expect(page.locator('.progress-state')).toContainText('could not be read');
  await expect(page.getByRole('button', { name: 'Download the part that could not be read' })).toBeVisible();
  await earnFullMarks(page, 8);
  await page.goto('/progress/');
  await expect(scoreRow(page)).toContainText('100 %');
});
