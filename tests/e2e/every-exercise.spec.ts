import { expect, test } from '@playwright/test';
import { readExercises } from '../../src/content-reader/read-exercises.ts';
import { answerKey, fillSheet, openExercise } from '../support/exercise-page.ts';

/** Every exercise, worked in a browser as a learner would, with fields, choices and orders. */
for (const { slug } of readExercises()) {
  test(`${slug} gives full marks for its key and writes out the solution`, async ({ page }) => {
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    const key = await answerKey(slug, 5);
    await openExercise(page, slug, 5);
    await fillSheet(page, key);
    await page.getByRole('button', { name: 'Check my working' }).click();
    const count = Object.keys(key).length;
    await expect(page.locator('.ws-score')).toContainText(`${count} of ${count} steps`);
    await page.getByRole('button', { name: 'Show the worked solution' }).click();
    await expect(page.locator('.ws-solution .ws-working > li').first()).toBeVisible();
    const text = (await page.locator('main').innerText()) ?? '';
    expect(text).not.toMatch(/\b(NaN|Infinity|undefined|null)\b|\{\w+\}/);
    expect(complaints).toEqual([]);
  });
}
