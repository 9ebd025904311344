/**
 * How long an explorer takes from a key press, or a step of a drag, to the painted frame.
 * `node tests/support/frame-times.ts [path …]` for the site in dist, or in the folder named by SITE.
 *
 * Counted from the time stamp of the browser's input event to the first task after the frame that answers it. The
 * browser runs without its frame-rate limit, so that the figure is work and not the wait for a screen's next refresh.
 * A bare slider with one word beside it is measured first: what the browser itself takes on this machine, just now.
 */
import { fileURLToPath } from 'node:url';
import { type CDPSession, chromium, type Locator, type Page } from '@playwright/test';
import { serve } from '../../src/terminal/serve.ts';
import { BROWSER_ARGS, ensureBrowser } from './find-browser.ts';

const executablePath = ensureBrowser();
const args = [...BROWSER_ARGS, '--disable-frame-rate-limit', '--disable-gpu-vsync'];
const rates = [1, 4] as const;
const samples = 40;
/** Greatest medians [ms], by throttling rate. */
const limitsMs = { drawing: { 1: 5, 4: 17 }, chart: { 1: 8, 4: 25 } } as const;

type Action = 'key' | 'drag';

/** Runs in the page: notes one figure for each input event that a range sends. */
function watchFrames(): void {
  const noted: number[] = [];
  Object.assign(window, { frameTimesMs: noted });
  let startedMs = 0;
  const start = (event: Event) => {
    startedMs = event.timeStamp;
  };
  addEventListener('keydown', start, { capture: true });
  addEventListener('pointermove', start, { capture: true });
  const { port1, port2 } = new MessageChannel();
  let countedFromMs = 0;
  port1.onmessage = () => noted.push(performance.now() - countedFromMs);
  addEventListener(
    'input',
    () => {
      const from = startedMs;
      requestAnimationFrame(() => {
        countedFromMs = from;
        port2.postMessage(0);
      });
    },
    { capture: true },
  );
}

async function takeTimes(page: Page): Promise<number[]> {
  return page.evaluate(() => {
    const noted = (window as unknown as { frameTimesMs: number[] }).frameTimesMs;
    return noted.splice(0);
  });
}

async function act(page: Page, range: Locator, action: Action): Promise<number[]> {
  await range.scrollIntoViewIfNeeded();
  const box = await range.boundingBox();
  if (!box) throw new Error('range: expected a control on screen, found none');
  await takeTimes(page);
  if (action === 'key') {
    await range.focus();
    for (let i = 0; i < samples; i++) {
      await page.keyboard.press(i % 8 < 4 ? 'ArrowLeft' : 'ArrowRight');
      await page.waitForTimeout(25);
    }
  } else {
    const y = box.y + box.height / 2;
    await page.mouse.move(box.x + box.width * 0.35, y);
    await page.mouse.down();
    for (let i = 0; i < samples; i++) {
      await page.mouse.move(box.x + box.width * (0.35 + (0.4 * (i + 1)) / samples), y);
      await page.waitForTimeout(25);
    }
    await page.mouse.up();
  }
  await page.waitForTimeout(200);
  return takeTimes(page);
}

const at = (sorted: readonly number[], ratio: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * ratio))] ?? Number.NaN;

async function measure(page: Page, throttle: CDPSession, place: Locator): Promise<boolean> {
  const id = await place.getAttribute('data-explorer');
  await place.scrollIntoViewIfNeeded();
  await page.waitForFunction(
    (element) => (element as HTMLElement).dataset['awake'] !== undefined,
    await place.elementHandle(),
  );
  // Long enough for the chart package to arrive and for the explorer to warm up.
  await page.waitForTimeout(1500);
  const kind = (await place.locator('canvas').count()) > 0 ? 'chart' : 'drawing';
  const range = place.locator('input[type=range]:enabled').first();
  let within = true;
  for (const rate of rates) {
    await throttle.send('Emulation.setCPUThrottlingRate', { rate });
    for (const action of ['key', 'drag'] as const) {
      const times = (await act(page, range, action)).sort((a, b) => a - b);
      const median = at(times, 0.5);
      const good = median <= limitsMs[kind][rate];
      within &&= good;
      console.log(
        `${id?.padEnd(22)} ${action.padEnd(5)} ${rate}×  median ${median.toFixed(1).padStart(5)} ms  95 % ${at(times, 0.95).toFixed(1).padStart(5)} ms  (${times.length} frames)${good ? '' : '  OVER'}`,
      );
    }
  }
  await throttle.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return within;
}

const bareSlider =
  '<div data-explorer="(bare slider)" data-awake><input type="range" max="1000" value="400"><p>0</p></div>' +
  '<script>document.querySelector("input").oninput = (e) => { document.querySelector("p").textContent = e.target.value; };</script>';

async function measureAll(url: string, judged: boolean): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 1000 } });
  await page.addInitScript(watchFrames);
  await page.goto(url, { waitUntil: 'networkidle' });
  const throttle = await page.context().newCDPSession(page);
  for (const place of await page.locator('[data-explorer]').all()) {
    if (!(await measure(page, throttle, place)) && judged) process.exitCode = 1;
  }
  await page.close();
}

const paths = process.argv.length > 2 ? process.argv.slice(2) : ['/lessons/overload-levels/three-levels/'];
const site = await serve({
  root: process.env['SITE'] ?? fileURLToPath(new URL('../../dist', import.meta.url)),
});
const browser = await chromium.launch({ executablePath, args });
try {
  await measureAll(`data:text/html,${encodeURIComponent(bareSlider)}`, false);
  for (const path of paths) await measureAll(new URL(path, site.address).href, true);
} finally {
  await browser.close();
  await site.close();
}
