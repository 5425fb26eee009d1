import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { startServer } from '../../support/server';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the demo shop is served for the browser tests, e.g. http://127.0.0.1:40123 */
    address: string;
    /** The data folder of that server. */
    dataDir: string;
  }
}

/** One server on the demo shop for all browser tests, in a data folder of its own, gone afterwards. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const dataDir = mkdtempSync(join(tmpdir(), 'edgekeep-browser-'));
  const server = await startServer({ dataDir });
  project.provide('address', server.address);
  project.provide('dataDir', dataDir);
  return async () => {
    await server.stop();
    rmSync(dataDir, { recursive: true, force: true });
  };
}
