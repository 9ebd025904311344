import { expect, type Page } from '@playwright/test';
import { openExercise as openFromContent } from '../../src/content-reader/open-exercise.ts';

export type Key = Readonly<Record<string, string>>;

/** The right answer to every asked step, as a learner would enter it. */
export async function answerKey(slug: string, seed: number): Promise<Key> {
  const { session } = await openFromContent(slug, seed);
  return Object.fromEntries(session.asked.map((stepId) => [stepId, session.reveal(stepId).answer]));
}

/** Opens an exercise and waits until it can be marked. */
export async function openExercise(page: Page, slug: string, seed: number): Promise<void> {
  await page.goto(`/exercises/${slug}/?seed=${seed}`);
  await expect(page.getByRole('button', { name: 'Check my working' })).toBeEnabled();
  await expect(page.locator('.ws-foot .ws-seed')).toContainText(String(seed));
}

/** Enters answers: figures are typed, choices are picked, orders are made with the buttons. */
export async function fillSheet(page: Page, answers: Key): Promise<void> {
  for (const [stepId, answer] of Object.entries(answers)) {
    const step = page.locator(`[data-step="${stepId}"]`);
    if ((await step.locator('.ws-order').count()) > 0) await putInOrder(page, stepId, answer.split('>'));
    else if ((await step.locator('input[type="radio"]').count()) > 0)
      await step.locator(`input[value="${answer}"]`).check();
    else await step.locator('input').fill(answer);
  }
}

async function putInOrder(page: Page, stepId: string, wanted: readonly string[]): Promise<void> {
  const items = page.locator(`[data-step="${stepId}"] .ws-order > li`);
  for (const [place, id] of wanted.entries()) {
    for (;;) {
      const ids = await items.evaluateAll((nodes) =>
        nodes.map((node) => (node as HTMLElement).dataset['option']),
      );
      const now = ids.indexOf(id);
      if (now <= place) break;
      await items.nth(now).getByRole('button').first().click();
    }
  }
  // An order that already stands as wanted must still be entered once.
  if (wanted.length > 1) {
    await items.nth(0).getByRole('button').nth(1).click();
    await items.nth(1).getByRole('button').first().click();
  }
}
