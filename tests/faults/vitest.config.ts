import { defineConfig, mergeConfig } from 'vitest/config';
import built from '../app/browser/vitest.config';

/** Tests of starting and stopping the built program. */
export default mergeConfig(
  { ...built, test: { ...built.test, include: [], globalSetup: [] } },
  defineConfig({
    test: { include: ['tests/faults/start.test.ts'], globalSetup: ['tests/faults/global-setup.ts'] },
  }),
);
