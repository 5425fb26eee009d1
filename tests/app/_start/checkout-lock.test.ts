import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { runFolder, withCheckoutLock } from '@/app/_start/checkout-lock.mjs';
import { isAlive, startTicks } from '@/app/_start/process-alive.mjs';
import { noteServer, refuseUnderRunningServer, runningServers } from '@/app/_start/running-servers.mjs';

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'edgekeep-lock-'));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

const lockFile = () => join(runFolder(root), 'start.lock');
const silent = () => undefined;

/** The number of a process that has ended. */
function deadPid(): number {
  return spawnSync(process.execPath, ['-e', '']).pid;
}

it('lets one work at a time, in turn, and is gone afterwards', async () => {
  let inside = 0;
  let most = 0;
  const work = () =>
    withCheckoutLock(
      root,
      async () => {
        inside += 1;
        most = Math.max(most, inside);
        await wait(20);
        inside -= 1;
      },
      silent,
    );
  await Promise.all([work(), work(), work()]);
  expect(most).toBe(1);
  expect(existsSync(lockFile())).toBe(false);
});

it('is given back when the work fails', async () => {
  await expect(withCheckoutLock(root, () => Promise.reject(new Error('broke')), silent)).rejects.toThrow(
    'broke',
  );
  expect(existsSync(lockFile())).toBe(false);
});

it('is taken over from a dead owner, by one contender only', async () => {
  writeFileSync(lockFile(), JSON.stringify({ pid: deadPid() }));
  let inside = 0;
  const work = () =>
    withCheckoutLock(
      root,
      async () => {
        inside += 1;
        expect(inside).toBe(1);
        await wait(10);
        inside -= 1;
      },
      silent,
    );
  await Promise.all([work(), work(), work(), work()]);
});

it('is still held while a child of the dead owner runs', async () => {
  const child = spawn(process.execPath, ['-e', 'setTimeout(() => {}, 60000)']);
  const pid = child.pid ?? 0;
  writeFileSync(lockFile(), JSON.stringify({ pid: deadPid(), child: { pid, ticks: startTicks(pid) } }));
  let entered = false;
  const enter = async () => {
    entered = true;
  };
  const work = withCheckoutLock(root, enter, silent);
  await wait(700);
  expect(entered).toBe(false);
  child.kill('SIGKILL');
  await work;
  expect(entered).toBe(true);
});

it('does not mistake a new process of the same number for the owner', () => {
  expect(isAlive(process.pid, startTicks(process.pid))).toBe(true);
  if (process.platform === 'linux') expect(isAlive(process.pid, '1')).toBe(false);
  expect(isAlive(deadPid())).toBe(false);
  expect(isAlive(0)).toBe(false);
});

it('names the server that runs from the checkout, and forgets dead ones', () => {
  writeFileSync(
    join(runFolder(root), 'server-1.json'),
    JSON.stringify({ pid: deadPid(), address: 'http://gone' }),
  );
  expect(runningServers(root)).toEqual([]);
  expect(existsSync(join(runFolder(root), 'server-1.json'))).toBe(false);
  expect(() => refuseUnderRunningServer(root, 'it changed')).not.toThrow();
  noteServer(root, 'http://127.0.0.1:1');
  expect(runningServers(root)).toHaveLength(1);
  expect(() => refuseUnderRunningServer(root, 'it changed')).toThrow(
    `already runs from this folder at http://127.0.0.1:1 (process ${process.pid}) and it changed`,
  );
});
