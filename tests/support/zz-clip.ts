import { chromium } from '@playwright/test';
import { serve } from '../../src/terminal/serve.ts';

const [path = '/', w = '1280', scheme = 'light', y = '0', h = '1500', out = '/tmp/c.png', media = 'screen'] =
  process.argv.slice(2);
const site = await serve({ root: '/tmp/site/dist' });
const b = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
});
const p = await b.newPage({ viewport: { width: Number(w), height: 900 }, colorScheme: scheme as 'light' });
p.on('console', (m) => console.log(m.text()));
p.on('pageerror', (e) => console.log(e.message));
await p.goto(site.address + path.slice(1), { waitUntil: 'networkidle' });
await p.emulateMedia({ media: media as 'print', colorScheme: scheme as 'light' });
if (process.env.EVAL) await p.evaluate(process.env.EVAL);
await p.waitForTimeout(200);
await p.screenshot({
  path: out,
  fullPage: true,
  clip: { x: 0, y: Number(y), width: Number(w), height: Number(h) },
});
await b.close();
await site.close();
