import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Every call of a layout and of an upgrade fails in turn: too long for `npm test`. */
export default defineConfig({
  root: fileURLToPath(new URL('../../', import.meta.url)),
  test: {
    include: ['tests/interruptions/*.interruptions.ts'],
    pool: 'threads',
    maxWorkers: '100%',
    reporters: ['dot'],
    diff: { truncateThreshold: 40 },
  },
});
