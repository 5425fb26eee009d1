import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runFolder } from './checkout-lock.mjs';
import { isAlive, startTicks } from './process-alive.mjs';
import { Refused } from './refused.mjs';

/** Notes that this process serves from the checkout, and forgets it when the process ends. */
export function noteServer(root, address) {
  const path = join(runFolder(root), `server-${process.pid}.json`);
  writeFileSync(path, JSON.stringify({ pid: process.pid, ticks: startTicks(process.pid), address }));
  process.on('exit', () => rmSync(path, { force: true }));
}

/** The servers that run from this checkout; notes of dead ones are removed. */
export function runningServers(root) {
  const folder = runFolder(root);
  const notes = readdirSync(folder).filter((name) => /^server-\d+\.json$/.test(name));
  return notes.flatMap((name) => {
    const path = join(folder, name);
    const note = readNote(path);
    if (note && isAlive(note.pid, note.ticks)) return [note];
    rmSync(path, { force: true });
    return [];
  });
}

/** Installing or building under a running server would break it. */
export function refuseUnderRunningServer(root, what) {
  const [server] = runningServers(root);
  if (!server) return;
  throw new Refused(
    `Edgekeep already runs from this folder at ${server.address} (process ${server.pid}) and ${what}: stop it first, then start again.`,
  );
}

function readNote(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}
