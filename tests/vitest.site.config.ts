import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Tests of the built site: run after the build. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: { include: ['tests/site/**/*.test.ts'], pool: 'threads', isolate: false, testTimeout: 60_000 },
});
