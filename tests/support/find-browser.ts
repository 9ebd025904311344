import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

/** Where distributions put a Chromium. */
const SYSTEM_PATHS = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** Flags for a Chromium in a container without a GPU and without a way out to the network. */
export const BROWSER_ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A Chromium that is on this machine, or null: the one HEADROOM_BROWSER names, Playwright's own, the system's. */
export function findBrowser(): string | null {
  const named = process.env['HEADROOM_BROWSER'];
  if (named !== undefined && named !== '') {
    if (existsSync(named)) return named;
    throw new Error(
      `HEADROOM_BROWSER: expected the path of a Chromium, found "${named}", which does not exist`,
    );
  }
  return [chromium.executablePath(), ...SYSTEM_PATHS].find((path) => existsSync(path)) ?? null;
}

/** As `findBrowser`, but installs one when there is none: Playwright's download first, then the system's package. */
export function ensureBrowser(): string {
  const found = findBrowser();
  if (found) return found;
  const ways: [string, string[]][] = [
    ['npx', ['playwright', 'install', 'chromium']],
    ['apt-get', ['update']],
    ['apt-get', ['install', '-y', '--no-install-recommends', 'chromium']],
  ];
  for (const [command, args] of ways) {
    try {
      execFileSync(command, args, { stdio: 'inherit', timeout: 600_000 });
    } catch {
      console.warn(`${command} ${args.join(' ')} did not work here; trying the next way.`);
    }
    const installed = findBrowser();
    if (installed) return installed;
  }
  throw new Error(
    'Browser tests need a Chromium. Install one (for example "npx playwright install chromium", or your system\'s ' +
      'package), or set HEADROOM_BROWSER to the path of one, and run the tests again.',
  );
}

if (import.meta.main) console.log(`Browser: ${ensureBrowser()}`);
