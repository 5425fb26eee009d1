import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('.', import.meta.url));

export default defineConfig({
  resolve: {
    alias: [
      { find: /^@\//, replacement: root },
      { find: 'server-only', replacement: `${root}tests/support/empty.ts` },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/app/browser/**', 'tests/faults/start.test.ts', 'node_modules/**'],
    setupFiles: ['tests/support/setup.ts'],
    testTimeout: 90_000,
  },
});
