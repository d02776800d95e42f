import { defineConfig } from 'vitest/config';

/** Test files share a worker: a mutant's tests start in a third of a second. The Stryker configuration names the folder. */
export default defineConfig({
  test: {
    include: ['**/*.test.ts'],
    pool: 'threads',
    isolate: false,
    testTimeout: 30_000,
  },
});
