import { closeSync, fsyncSync, linkSync, openSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { openDb } from '../../db/open';
import { pathOf, syncFolder } from '../../db/shop-files';
import { type DemoEnv, seedDemo } from '../../seed/demo';
import { isAlive } from './process-alive.mjs';

const unfinished = /^demo\.sqlite\.filling-(\d+)(-wal|-shm|-journal)?$/;

/**
 * Makes the demo shop's database in one step seen from outside: it is filled under another name and takes its own name
 * when complete and on the disk. A kill half-way leaves a file that the next start removes, never half a demo.
 */
export function createDemo(dir: string, env: DemoEnv): void {
  const path = `${pathOf(dir, 'demo')}.filling-${process.pid}`;
  removeUnfinished(dir);
  try {
    fill(path, env);
    takeName(path, pathOf(dir, 'demo'));
  } catch (error) {
    // On a full disk the half-filled file is the first thing that is in the way.
    removeUnfinished(dir);
    throw error;
  }
  syncFolder(dir);
}

function fill(path: string, env: DemoEnv): void {
  const db = openDb(path);
  try {
    seedDemo(db, env);
  } finally {
    db.$client.close();
  }
  syncFile(path);
}

/** A link, not a rename: when another start was quicker its demo, perhaps in use by now, is not replaced. */
function takeName(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
  } finally {
    rmSync(from, { force: true });
  }
}

/** Removes what killed starts left of this process's number or of processes that are gone. */
function removeUnfinished(dir: string): void {
  for (const name of readdirSync(dir)) {
    const pid = Number(unfinished.exec(name)?.[1]);
    if (pid === process.pid || (pid > 0 && !isAlive(pid))) rmSync(join(dir, name), { force: true });
  }
}

function syncFile(path: string): void {
  const handle = openSync(path, 'r+');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
