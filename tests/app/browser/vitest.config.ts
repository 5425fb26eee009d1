import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../../../', import.meta.url));

/** Browser tests of the built program. Two files at a time, each worker with a demo shop of its own. */
export default defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^@\//, replacement: root },
      { find: 'server-only', replacement: `${root}tests/support/empty.ts` },
    ],
  },
  test: {
    include: ['tests/app/browser/**/*.test.ts'],
    setupFiles: ['tests/support/setup.ts'],
    globalSetup: ['tests/app/browser/global-setup.ts'],
    maxWorkers: 2,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
