import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { copyDemo, provideDemoFile } from '../../support/demo-file';
import { startServer } from '../../support/server';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the demo shops are served, one for each worker. */
    addresses: readonly string[];
  }
}

/** A server on the demo shop for each worker, in a data folder of its own, gone afterwards. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const { demoFile, remove } = provideDemoFile(project);
  const shops = await Promise.all(
    Array.from({ length: project.config.maxWorkers }, () => demoShop(demoFile)),
  );
  project.provide(
    'addresses',
    shops.map(({ address }) => address),
  );
  return async () => {
    await Promise.all(shops.map(({ stop }) => stop()));
    remove();
  };
}

async function demoShop(demoFile: string) {
  const dataDir = mkdtempSync(join(tmpdir(), 'edgekeep-browser-'));
  copyDemo(dataDir, demoFile);
  const server = await startServer({ dataDir });
  return {
    address: server.address,
    stop: async () => {
      await server.stop();
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
}
