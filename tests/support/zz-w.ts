import { chromium } from '@playwright/test';
import { serve } from '../../src/terminal/serve.ts';

const site = await serve({ root: '/tmp/site/dist' });
const b = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic'],
});
const p = await b.newPage({ viewport: { width: 320, height: 800 } });
await p.goto(site.address + 'exercises/kettle-and-plate/', { waitUntil: 'networkidle' });
console.log(
  await p.evaluate(() =>
    [...document.querySelectorAll('*')]
      .filter((e) => e.getBoundingClientRect().right > 321 && !e.closest('.visually-hidden'))
      .map((e) => e.tagName + '.' + e.className + ' ' + Math.round(e.getBoundingClientRect().right))
      .slice(0, 12),
  ),
);
console.log(
  await p.evaluate(() =>
    [...document.querySelectorAll('math')]
      .filter((e) => e.scrollWidth > e.clientWidth + 1)
      .map((e) => e.textContent + e.scrollWidth + '/' + e.clientWidth),
  ),
);
await p.screenshot({ path: '/tmp/k.png', fullPage: true });
await b.close();
await site.close();
