import { spawnSync } from 'node:child_process';
import { copyFileSync, cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { root } from '../support/server';

let checkout: string;
beforeEach(() => {
  checkout = mkdtempSync(join(tmpdir(), 'edgekeep-install-'));
  cpSync(join(root, 'app', '_start'), join(checkout, 'app', '_start'), { recursive: true });
  for (const name of ['package.json', 'package-lock.json'])
    copyFileSync(join(root, name), join(checkout, name));
});
afterEach(() => rmSync(checkout, { recursive: true, force: true }));

/** Starts a fresh checkout with a Node of its own and only these commands within reach. */
function startFresh(commands: Readonly<Record<string, string>>) {
  const bin = join(checkout, 'bin');
  mkdirSync(bin);
  const node = join(bin, 'node');
  copyFileSync(process.execPath, node);
  for (const [name, script] of Object.entries(commands))
    writeFileSync(join(bin, name), script, { mode: 0o755 });
  const args = ['app/_start/start.mjs', '--port', '0', '--data', join(checkout, 'kept')];
  return spawnSync(node, args, {
    cwd: checkout,
    encoding: 'utf8',
    env: { PATH: bin, HOME: checkout, NODE_ENV: 'production' },
  });
}

it('a start without npm is refused in one sentence', () => {
  const { status, stderr } = startFresh({});
  expect(stderr.trim()).toBe('npm was not found: install it (it comes with Node) and start again.');
  expect(status).toBe(1);
});

it('a start whose installation fails says so, and leaves no lock behind', () => {
  const { status, stderr } = startFresh({ npm: '#!/bin/sh\necho "npm: no such registry" >&2\nexit 1\n' });
  expect(stderr.trim().split('\n')).toEqual([
    'npm: no such registry',
    'Installing the packages failed; npm says why above. Nothing was started.',
  ]);
  expect(status).toBe(1);
  expect(readdirSync(join(checkout, '.run'))).toEqual([]);
});

it('a start whose addon does not open says what is needed', () => {
  const { status, stderr } = startFresh({ npm: '#!/bin/sh\nexit 0\n' });
  expect(stderr.trim()).toMatch(
    /^The packages are installed, but the SQLite addon does not open under Node v.*start again\.$/,
  );
  expect(status).toBe(1);
});
