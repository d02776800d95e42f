import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Tests that need programs of the machine's own: Chromium, Poppler, LibreOffice. One at a time: they are measured too. */
export default defineConfig({
  root: fileURLToPath(new URL('../../', import.meta.url)),
  test: {
    include: ['tests/browser/**/*.browser.test.ts'],
    fileParallelism: false,
    testTimeout: 120_000,
    hookTimeout: 180_000,
  },
});
