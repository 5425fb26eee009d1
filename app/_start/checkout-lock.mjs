import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { isAlive, startTicks } from './process-alive.mjs';

const youngMs = 10_000;

/**
 * Runs `work` while no other start or test of this checkout installs or builds. The lock is a file naming its owner
 * and the child the owner waits for (an orphaned `npm ci` still holds it); a lock whose owners are dead is taken over.
 * `work` is given `noteChild`, to be called with the number of each child.
 */
export async function withCheckoutLock(root, work, say = console.log) {
  const path = join(runFolder(root), 'start.lock');
  let told = false;
  while (!takeLock(path)) {
    if (!told) say('Another start of this folder is installing or building: waiting for it.');
    told = true;
    await wait(300);
  }
  const free = () => rmSync(path, { force: true });
  process.on('exit', free);
  try {
    return await work((childPid) => write(path, { ...owner(process.pid), child: owner(childPid) }));
  } finally {
    process.off('exit', free);
    free();
  }
}

/** The folder for locks and the list of running servers, `.run` in the checkout; not part of the project's files. */
export function runFolder(root) {
  const folder = join(root, '.run');
  mkdirSync(folder, { recursive: true });
  return folder;
}

function takeLock(path) {
  if (create(path)) return true;
  if (isHeld(path)) return false;
  // Only one contender may remove a dead lock, or the second would remove the fresh lock of the first.
  const broom = `${path}.broom`;
  if (!create(broom)) {
    if (ageMs(broom) > youngMs) rmSync(broom, { force: true });
    return false;
  }
  if (!isHeld(path)) rmSync(path, { force: true });
  const taken = create(path);
  rmSync(broom, { force: true });
  return taken;
}

function create(path) {
  try {
    writeFileSync(path, JSON.stringify(owner(process.pid)), { flag: 'wx' });
    return true;
  } catch (error) {
    if (error.code === 'EEXIST') return false;
    throw error;
  }
}

function write(path, content) {
  const next = `${path}.${process.pid}`;
  writeFileSync(next, JSON.stringify(content));
  renameSync(next, path);
}

function isHeld(path) {
  const held = readJson(path);
  if (!held) return existsSync(path) && ageMs(path) < youngMs;
  return (
    isAlive(held.pid, held.ticks) || (held.child !== undefined && isAlive(held.child.pid, held.child.ticks))
  );
}

function ageMs(path) {
  try {
    return Date.now() - statSync(path).mtimeMs;
  } catch {
    return 0;
  }
}

function owner(pid) {
  return { pid, ticks: startTicks(pid) };
}

function readJson(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}
