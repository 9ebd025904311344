import { expect, test } from '@playwright/test';
import { sitePaths } from '../support/site-paths.ts';

const lessons = sitePaths().filter((path) => path.startsWith('/lessons/'));

test('ticks of "I can …" stay after a reload and show on the map', async ({ page }) => {
  const [path = ''] = lessons;
  await page.goto(path);
  const boxes = page.locator('[data-can-do]');
  await expect(boxes.first()).toBeEnabled();
  for (const box of await boxes.all()) await box.check();
  await page.locator('[data-mark-done]').click();
  await page.waitForTimeout(300);
  await page.reload();
  await expect(boxes.first()).toBeChecked();
  await page.goto('/');
  await expect(page.getByText('1 of 9 lessons done')).toBeVisible();
});

for (const path of lessons) {
  test(`${path}: every explorer wakes, answers the keyboard, and tells it in words`, async ({ page }) => {
    await page.goto(path);
    const explorers = page.locator('[data-explorer]');
    expect(await explorers.count()).toBeGreaterThan(0);
    for (const explorer of await explorers.all()) {
      await explorer.scrollIntoViewIfNeeded();
      await expect(explorer).toHaveAttribute('data-awake', '');
      const slider = explorer.locator('input[type="range"]:visible').first();
      const summary = explorer.locator('.explorer-summary');
      if ((await slider.count()) > 0) {
        const before = await summary.innerText();
        await slider.focus();
        for (let press = 0; press < 6; press += 1) await page.keyboard.press('ArrowRight');
        await expect(summary).not.toHaveText(before);
      }
      expect(await explorer.innerText()).not.toMatch(/\b(NaN|Infinity|undefined)\b/);
      await expect(explorer.locator('details table, table').first()).toBeAttached();
      await expect(explorer.locator('[role="img"]').first()).toHaveAttribute('aria-label', /.+/);
    }
  });
}

test('search finds a lesson by a word, from the keyboard', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('combobox').first().fill('ambient');
  await expect(page.getByRole('option').first()).toBeVisible();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page).not.toHaveURL(/\/$/);
});

test('prints a lesson and an exercise without the frame, with the address', async ({ page }) => {
  await page.emulateMedia({ media: 'print' });
  await page.goto('/exercises/pump-house-pump/?seed=7');
  await expect(page.locator('.site-header')).toBeHidden();
  await expect(page.locator('.ws-actions').first()).toBeHidden();
  await expect(page.locator('.ws-seed').first()).toContainText('7');
});
