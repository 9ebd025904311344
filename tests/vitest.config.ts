import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Everything tested here is pure: threads without isolation start fastest and share the module cache.
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['src/**/*.test.ts', 'tests/{published,properties,content,architecture,frozen}/**/*.test.ts'],
    pool: 'threads',
    isolate: false,
    testTimeout: 30_000,
  },
});
