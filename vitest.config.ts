import { availableParallelism } from 'node:os';
import { relative } from 'node:path';
import { defineConfig } from 'vitest/config';
import { testsNaming } from './scripts/quick/tests-naming.ts';

// What draws hundreds of motors, firings or documents, or refines grids, has a step of its own: npm run test:statistics.
const slow = 'tests/**/*.slow.test.ts';

export default defineConfig(({ mode }) => ({
  test: {
    ...(mode === 'statistics'
      ? { include: [slow], testTimeout: 300_000 }
      : { include: ['tests/**/*.test.ts'], exclude: [slow], testTimeout: 60_000 }),
    setupFiles: ['tests/property-seed.ts'],
    // Tests share nothing but pure functions: the library is loaded once a process, not once a file.
    isolate: false,
    // Without it one core is left idle.
    maxWorkers: availableParallelism(),
    // While watching, a change runs the tests that name it, not the nearly all that import it by way of an index.
    watchTriggerPatterns: [
      {
        pattern: /\/(?:src|tests)\/.+\.ts$/,
        testsToRun: (file) => [...testsNaming([relative(import.meta.dirname, file)])],
      },
    ],
  },
}));
