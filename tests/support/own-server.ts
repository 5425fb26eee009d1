import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Db, openDb } from '@/db/open';
import { copyDemo } from './demo-file';
import { startServer } from './server';

/** The demo shop on a server of its own, for tests that change much of it; with its database open beside the server. */
export async function ownServer(): Promise<{ address: string; db: Db; stop: () => Promise<void> }> {
  const dataDir = mkdtempSync(join(tmpdir(), 'edgekeep-own-'));
  copyDemo(dataDir);
  const server = await startServer({ dataDir });
  const db = openDb(join(dataDir, 'demo.sqlite'));
  return {
    address: server.address,
    db,
    stop: async () => {
      db.$client.close();
      await server.stop();
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
}
