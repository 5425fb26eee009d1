import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Refused } from './refused.mjs';
import { runChild } from './run-child.mjs';
import { refuseUnderRunningServer } from './running-servers.mjs';

const inputs = [
  'app',
  'lib',
  'db',
  'seed',
  'public',
  'next.config.ts',
  'tsconfig.json',
  'tsconfig.build.json',
  'package-lock.json',
];

/** Builds the pages when anything they are made of has changed since the last build. */
export async function ensureBuilt(root, { noteChild, say = console.log }) {
  if (isBuilt(root)) return;
  refuseUnderRunningServer(root, 'its pages have changed');
  say('Building the pages; this takes about half a minute.');
  const stamp = buildStamp(root);
  rmSync(stampFile(root), { force: true });
  const next = join(root, 'node_modules', 'next', 'dist', 'bin', 'next');
  const env = { ...process.env, NEXT_TELEMETRY_DISABLED: '1' };
  delete env.NODE_ENV;
  const stdio = ['ignore', 'pipe', 'pipe'];
  const { code, stdout, stderr } = await runChild(process.execPath, [next, 'build'], {
    cwd: root,
    env,
    stdio,
    onSpawn: noteChild,
  });
  if (code !== 0) {
    throw new Refused(
      `${stdout}${stderr}\nThe build of the pages failed, as told above. Nothing was started.`,
    );
  }
  writeFileSync(stampFile(root), stamp);
}

export function isBuilt(root) {
  if (!existsSync(join(root, '.next', 'BUILD_ID')) || !existsSync(stampFile(root))) return false;
  return readFileSync(stampFile(root), 'utf8') === buildStamp(root);
}

function stampFile(root) {
  return join(root, '.next', '.stamp');
}

/** One hash over every file that goes into the build, and over the version of Node. */
function buildStamp(root) {
  const hash = createHash('sha256').update(process.version);
  for (const path of inputs.flatMap((input) => listFiles(root, input))) {
    hash.update(`\n${path}\n`).update(readFileSync(join(root, path)));
  }
  return hash.digest('hex');
}

function listFiles(root, path) {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path];
  return readdirSync(full)
    .sort()
    .flatMap((name) => listFiles(root, `${path}/${name}`));
}
