import { AxeBuilder } from '@axe-core/playwright';
import { chromium } from '@playwright/test';
import { serve } from '../../src/terminal/serve.ts';

const site = await serve({ root: '/tmp/site/dist' });
const b = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic'],
});
for (const scheme of ['light', 'dark'] as const)
  for (const path of [
    '',
    'lessons/overload-levels/three-levels/',
    'lessons/current-power-meters/current-decides/',
    'glossary/',
    'sources/',
    'sites/',
    'equipment/',
    'about/',
    'progress/',
    'units/overload-levels/',
    'exercises/kettle-and-plate/',
    'exercises/',
    '404.html',
  ]) {
    const c = await b.newContext({
      colorScheme: scheme,
      viewport: { width: 320, height: 800 },
      bypassCSP: false,
    });
    const p = await c.newPage();
    p.on('console', (m) => {
      if (m.type() === 'error') console.log(path, m.text().slice(0, 300));
    });
    let n = 0;
    const bytes = 0;
    p.on('response', async (r) => {
      n++;
    });
    await p.goto(site.address + path, { waitUntil: 'networkidle' });
    const over = await p.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    const r = await new AxeBuilder({ page: p })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    console.log(
      scheme,
      path,
      'requests',
      n,
      'overflow',
      over,
      r.violations
        .map(
          (v) =>
            `${v.id}: ${v.nodes
              .slice(0, 3)
              .map((x) => x.html.slice(0, 150) + ' || ' + (x.any[0]?.message ?? ''))
              .join('\n   ')}`,
        )
        .join('\n  '),
    );
    await c.close();
  }
await b.close();
await site.close();
