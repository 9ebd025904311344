import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/**
 * Tests that are run against each fault put in on purpose: those beside engine and marking, and the published rows. The laws and
 * the sweeps over content would catch more, but take minutes for each fault.
 */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['src/{engine,course}/**/*.test.ts', 'tests/{published,properties}/**/*.test.ts'],
    exclude: [
      'src/course/{progress,worksheets,schema}/**',
      'tests/properties/answers.test.ts',
      'node_modules/**',
    ],
    pool: 'threads',
  },
});
