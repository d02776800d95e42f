import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**'],
    setupFiles: ['tests/givenSeed.ts'],
    pool: 'threads',
    maxWorkers: '100%',
    testTimeout: 30_000,
  },
});
