import { defineConfig } from '@playwright/test';
import { BROWSER_ARGS, findBrowser } from './support/find-browser.ts';

const executablePath = findBrowser();

/** The built site, served as `npm start` serves it. */
const PORT = 4799;

export default defineConfig({
  testDir: '.',
  testMatch: ['e2e/**/*.spec.ts', 'a11y/**/*.spec.ts'],
  outputDir: '../test-results',
  fullyParallel: true,
  workers: 2,
  forbidOnly: process.env['CI'] !== undefined,
  reporter: [['list']],
  use: {
    baseURL: `http://localhost:${PORT}`,
    locale: 'en-GB',
    timezoneId: 'UTC',
    launchOptions: { args: BROWSER_ARGS, ...(executablePath === null ? {} : { executablePath }) },
  },
  webServer: {
    command: `node src/terminal/serve.ts dist ${PORT}`,
    cwd: '..',
    port: PORT,
    reuseExistingServer: false,
  },
});
