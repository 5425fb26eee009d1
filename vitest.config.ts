import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('.', import.meta.url));

const PURE = ['tests/lib/**/*.test.ts'];
const DEMO = ['tests/seed/**/*.test.ts'];

export default defineConfig({
  resolve: {
    alias: [
      { find: /^@\//, replacement: root },
      { find: 'server-only', replacement: `${root}tests/support/empty.ts` },
    ],
  },
  test: {
    setupFiles: ['tests/support/setup.ts'],
    testTimeout: 90_000,
    // One to each core: by itself the runner leaves one core idle, which of two is half.
    maxWorkers: availableParallelism(),
    projects: [
      // lib is pure: its tests share one world, and the modules are loaded once instead of once a file.
      { extends: true, test: { name: 'lib', include: PURE, isolate: false } },
      // The demo takes seconds to make: its tests share the one that was made first.
      { extends: true, test: { name: 'demo', include: DEMO, isolate: false } },
      {
        extends: true,
        test: {
          name: 'shop',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: [
            ...PURE,
            ...DEMO,
            'tests/app/browser/**',
            'tests/faults/start.test.ts',
            'node_modules/**',
          ],
        },
      },
    ],
  },
});
