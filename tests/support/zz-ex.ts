import { chromium } from '@playwright/test';
import { serve } from '../../src/terminal/serve.ts';

const [w = '1280', scheme = 'light', out = '/tmp/e.png'] = process.argv.slice(2);
const site = await serve({ root: '/tmp/site/dist' });
const b = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic'],
});
const p = await b.newPage({ viewport: { width: Number(w), height: 900 }, colorScheme: scheme as 'light' });
p.on('console', (m) => console.log(m.text()));
p.on('pageerror', (e) => console.log(e.message));
await p.goto(site.address + 'exercises/pump-house-pump/', { waitUntil: 'networkidle' });
const f = p.locator('.ws-field input');
await f.nth(0).fill('2250 VA');
await f.nth(1).fill('9.78 A');
await p.locator('.btn-primary').click();
await p.waitForTimeout(600);
await p.screenshot({ path: out, fullPage: true });
// search
await p.goto(site.address, { waitUntil: 'networkidle' });
await p.locator('#search-input').fill('surg');
await p.waitForTimeout(400);
await p.keyboard.press('ArrowDown');
await p.screenshot({ path: '/tmp/search.png' });
await p.keyboard.press('Enter');
await p.waitForTimeout(400);
console.log(p.url());
// progress: mark lesson done, map moves
await p.goto(site.address + 'lessons/overload-levels/three-levels/', { waitUntil: 'networkidle' });
await p.waitForTimeout(800);
await p.locator('[data-can-do]').first().check();
await p.locator('[data-mark-done]').click();
await p.waitForTimeout(500);
await p.goto(site.address, { waitUntil: 'networkidle' });
await p.waitForTimeout(800);
console.log(
  await p.locator('[data-next-step]').innerText(),
  await p.locator('[data-lesson-state]').allInnerTexts(),
);
await p.locator('[data-theme-switch]').selectOption('dark');
await p.reload();
console.log(await p.evaluate('document.documentElement.dataset.theme'));
await p.screenshot({ path: '/tmp/map2.png' });
await b.close();
await site.close();
