import { expect, test } from '@playwright/test';
import { answerKey, fillSheet, type Key, openExercise } from '../support/exercise-page.ts';

const SLUG = 'pump-house-pump';
let key: Key;

test.beforeAll(async () => {
  key = await answerKey(SLUG, 7);
});

test('marks a right sheet fully and remembers it', async ({ page }) => {
  await openExercise(page, SLUG, 7);
  await fillSheet(page, key);
  await page.getByRole('button', { name: 'Check my working' }).click();
  await expect(page.locator('.ws-score')).toContainText('2 of 2 steps');
  await expect(page.locator('.ws-step[data-state="right"]')).toHaveCount(2);
});

test('names the slip behind a wrong figure and lets the error carry forward', async ({ page }) => {
  await openExercise(page, SLUG, 7);
  // The watts of the nameplate, taken for volt-amperes, and the current that follows from them at 230 V.
  const [watts = ''] = (await page.locator('.ws-given td').first().innerText()).split(/\s*kW/);
  await fillSheet(page, {
    apparentPowerVa: `${watts} kVA`,
    currentA: `${((Number(watts) * 1000) / 230).toFixed(2)} A`,
  });
  await page.getByRole('button', { name: 'Check my working' }).click();
  await expect(page.locator('.ws-score')).toContainText('1 of 2 steps');
  await expect(page.locator('[data-step="apparentPowerVa"]')).toContainText('These are the watts');
  await expect(page.locator('[data-step="currentA"]')).toHaveAttribute('data-state', 'carried');
  await page.getByRole('button', { name: 'Show the worked solution' }).click();
  await expect(page.locator('.ws-departed')).toContainText('Your figures leave the worked ones here');
  await expect(page.locator('.ws-solution math').first()).toBeVisible();
});

test('does not count what it cannot read, and says what to write', async ({ page }) => {
  await openExercise(page, SLUG, 7);
  await fillSheet(page, { apparentPowerVa: '2118', currentA: '9.2 A' });
  await page.getByRole('button', { name: 'Check my working' }).click();
  await expect(page.locator('.ws-score')).toContainText('no attempt was counted');
  await expect(page.locator('[data-step="apparentPowerVa"]')).toContainText(
    'Write the unit behind the figure',
  );
  const field = page.locator('[data-step="apparentPowerVa"] input');
  await expect(field).toBeFocused();
  await field.press('End');
  await field.pressSequentially(' VA');
  await expect(field).toBeFocused();
  // Nothing is told about the step that could be read.
  await expect(page.locator('[data-step="currentA"]')).not.toHaveAttribute('data-state');
  await expect(page.getByRole('button', { name: 'Show the worked solution' })).toHaveCount(0);
});

test('a press right after an unreadable entry is not lost when the reason pushes the sheet down', async ({
  page,
}) => {
  await openExercise(page, SLUG, 7);
  await page.locator('[data-step="currentA"] input').fill('9.2 bananas');
  await page.getByRole('button', { name: 'Check my working' }).click();
  await expect(page.locator('.ws-score')).toContainText('2 answers cannot be read yet');
});

test('takes the learner to the hint, and after new numbers to the story', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 480 });
  await openExercise(page, SLUG, 7);
  await page.getByRole('button', { name: 'Hint' }).click();
  await expect(page.locator('.ws-hint')).toBeInViewport();
  await page.getByRole('button', { name: 'Same again with other numbers' }).click();
  await expect(page.locator('.ws-story')).toBeInViewport();
  await expect(page.locator('.ws-story')).toBeFocused();
});

test('takes the score off the sheet as soon as an entry is changed', async ({ page }) => {
  await openExercise(page, SLUG, 7);
  await fillSheet(page, key);
  await page.getByRole('button', { name: 'Check my working' }).click();
  await expect(page.locator('.ws-score')).toContainText('2 of 2 steps');
  await fillSheet(page, { currentA: '1 A' });
  await expect(page.locator('.ws-score')).toBeEmpty();
});

test('echoes how an entry is read while it is typed', async ({ page }) => {
  await openExercise(page, SLUG, 7);
  await page.locator('[data-step="currentA"] input').fill('0,0092 kA');
  await expect(page.locator('[data-step="currentA"] .ws-echo')).toContainText('9.200 A');
});

test('keeps what was typed over a reload', async ({ page }) => {
  await openExercise(page, SLUG, 7);
  await fillSheet(page, { apparentPowerVa: '2.1 kVA' });
  await page.waitForTimeout(600);
  await page.reload();
  await expect(page.locator('[data-step="apparentPowerVa"] input')).toHaveValue('2.1 kVA');
});

test('does not keep a step that was shown as an entry of the learner', async ({ page }) => {
  await openExercise(page, SLUG, 7);
  await page.getByRole('button', { name: 'Hint' }).click();
  await page.getByRole('button', { name: 'Show this step' }).click();
  await fillSheet(page, { currentA: '9.2 A' });
  await page.waitForTimeout(600);
  await page.reload();
  await expect(page.locator('[data-step="currentA"] input')).toHaveValue('9.2 A');
  await expect(page.locator('[data-step="apparentPowerVa"] input')).toHaveValue('');
});

test('gives a hint first and the step only on asking again; a shown step earns nothing', async ({ page }) => {
  await openExercise(page, SLUG, 7);
  await page.getByRole('button', { name: 'Hint' }).click();
  await expect(page.locator('[data-step="apparentPowerVa"]')).toContainText('The nameplate states watts');
  await page.getByRole('button', { name: 'Show this step' }).click();
  await expect(page.locator('[data-step="apparentPowerVa"] input')).not.toHaveValue('');
  await fillSheet(page, { currentA: key['currentA'] ?? '' });
  await page.getByRole('button', { name: 'Check my working' }).click();
  await expect(page.locator('.ws-score')).toContainText('1 of 2 steps');
});

test('draws other numbers, keeps them in the address, and shows them again on going back', async ({
  page,
}) => {
  await openExercise(page, SLUG, 7);
  const before = await page.locator('.ws-story').textContent();
  await page.getByRole('button', { name: 'Same again with other numbers' }).click();
  await expect(page).toHaveURL(/seed=(?!7$)\d+/);
  const seed = new URL(page.url()).searchParams.get('seed');
  await expect(page.locator('.ws-seed').first()).toContainText(String(seed));
  await page.goBack();
  await expect(page.locator('.ws-story')).toHaveText(before ?? '');
});

test('answers an edited address with a sentence and goes on', async ({ page }) => {
  for (const seed of ['abc', '-1', '1e9', '%00', '9999999', '<b>']) {
    await page.goto(`/exercises/${SLUG}/?seed=${encodeURIComponent(seed)}`);
    await expect(page.getByRole('alert')).toContainText('whole number from 1 to 999999');
    await expect(page.getByRole('button', { name: 'Check my working' })).toBeEnabled();
  }
});

test('is worked from the keyboard alone', async ({ page }) => {
  await openExercise(page, SLUG, 7);
  await page.locator('[data-step="apparentPowerVa"] input').focus();
  await page.keyboard.type(key['apparentPowerVa'] ?? '');
  await page.keyboard.press('Tab');
  await expect(page.locator('[data-step="currentA"] input')).toBeFocused();
  await page.keyboard.type(key['currentA'] ?? '');
  await page.keyboard.press('Enter');
  await expect(page.locator('.ws-score')).toContainText('2 of 2 steps');
});

test('is ready to mark even where storage never answers', async ({ page }) => {
  await page.addInitScript(() => {
    // A database request that neither succeeds nor fails, as when another tab holds an upgrade.
    indexedDB.open = () => ({ addEventListener() {} }) as unknown as IDBOpenDBRequest;
  });
  await openExercise(page, SLUG, 7);
  await fillSheet(page, key);
  await page.getByRole('button', { name: 'Check my working' }).click();
  await expect(page.locator('.ws-score')).toContainText('2 of 2 steps');
});

test('says so when the marking cannot be fetched, and keeps what is typed', async ({ page }) => {
  await page.route('**/data/exercises/*.json', (route) => route.abort());
  await page.goto(`/exercises/${SLUG}/`);
  await page.locator('[data-step="currentA"] input').fill('9 A');
  await expect(page.locator('.ws-score')).toContainText('could not be fetched');
  await expect(page.locator('[data-step="currentA"] input')).toHaveValue('9 A');
});

test('keeps what is typed before its scripts arrive', async ({ page }) => {
  await page.route('**/assets/Exercise.*.js', async (route) => {
    await new Promise((done) => setTimeout(done, 1200));
    await route.continue();
  });
  await page.goto(`/exercises/${SLUG}/`, { waitUntil: 'commit' });
  await page.locator('[data-step="currentA"] input').fill('9.2 A');
  await expect(page.locator('[data-step="currentA"] .ws-echo')).toContainText('9.200 A');
  await expect(page.locator('[data-step="currentA"] input')).toHaveValue('9.2 A');
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  test('shows story, givens and questions', async ({ page }) => {
    await page.goto(`/exercises/${SLUG}/`);
    await expect(page.locator('.ws-given')).toContainText('Power on the nameplate');
    await expect(page.locator('.ws-step')).toHaveCount(2);
    await expect(page.locator('noscript p').first()).toContainText('Marking needs scripts');
  });
});
