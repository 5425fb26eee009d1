import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { Refused } from './refused.mjs';
import { runChild } from './run-child.mjs';
import { refuseUnderRunningServer } from './running-servers.mjs';

/** Installs the packages when they are missing, belong to another package-lock.json, or to another Node. */
export async function ensureInstalled(root, { noteChild, say = console.log }) {
  const stampFile = join(root, 'node_modules', '.edgekeep-install');
  const stamp = installStamp(root);
  if (readText(stampFile) === stamp) return;
  if (!matchesLock(root) || !(await addonOpens(root, noteChild))) {
    refuseUnderRunningServer(root, 'its packages must be installed anew');
    say('Installing the packages; the first time this takes one to three minutes.');
    await npmCi(root, noteChild);
    if (!(await addonOpens(root, noteChild))) {
      throw new Refused(
        `The packages are installed, but the SQLite addon does not open under Node ${process.version}: install python3, make, a C++ compiler and the headers of this Node, remove node_modules, and start again.`,
      );
    }
  }
  writeFileSync(stampFile, stamp);
}

function installStamp(root) {
  const lock = readFileSync(join(root, 'package-lock.json'));
  const hash = createHash('sha256').update(lock).digest('hex');
  return `${hash} ${process.platform}-${process.arch} abi ${process.versions.modules}`;
}

/** True when what npm noted as installed is what package-lock.json asks for, so that a developer's own `npm ci` counts. */
function matchesLock(root) {
  const wanted = readPackages(join(root, 'package-lock.json'));
  const found = readPackages(join(root, 'node_modules', '.package-lock.json'));
  if (!wanted || !found) return false;
  return Object.entries(wanted).every(([path, entry]) => {
    if (path === '') return true;
    const there = found[path];
    if (!there) return entry.optional === true;
    return there.version === entry.version && existsSync(join(root, path, 'package.json'));
  });
}

async function npmCi(root, onSpawn) {
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  const fromNpm = process.env.npm_execpath;
  const [command, first] = fromNpm?.endsWith('npm-cli.js')
    ? [process.execPath, [fromNpm]]
    : [npmCommand(), []];
  const { code } = await runChild(command, [...first, ...args], {
    cwd: root,
    env: installEnv(),
    onSpawn,
  }).catch((error) => {
    if (error.code !== 'ENOENT') throw error;
    throw new Refused('npm was not found: install it (it comes with Node) and start again.');
  });
  if (code !== 0) {
    throw new Refused('Installing the packages failed; npm says why above. Nothing was started.');
  }
}

function npmCommand() {
  return process.platform === 'win32' ? 'npm.cmd' : 'npm';
}

/** The environment for npm: development packages included, and the headers of exactly this Node where they lie beside it. */
function installEnv() {
  const env = { ...process.env, PATH: `${dirname(process.execPath)}${delimiter}${process.env.PATH ?? ''}` };
  delete env.NODE_ENV;
  delete env.npm_config_omit;
  delete env.npm_config_production;
  const prefix = dirname(dirname(process.execPath));
  if (headersVersion(prefix) === process.version) env.npm_config_nodedir = prefix;
  else if (env.npm_config_nodedir && headersVersion(env.npm_config_nodedir) !== process.version)
    delete env.npm_config_nodedir;
  return env;
}

function headersVersion(prefix) {
  const header = readText(join(prefix, 'include', 'node', 'node_version.h'));
  if (!header) return undefined;
  const part = (name) => header.match(new RegExp(`#define NODE_${name}_VERSION (\\d+)`))?.[1];
  return `v${part('MAJOR')}.${part('MINOR')}.${part('PATCH')}`;
}

/** In a process of its own: an addon built for another Node can end the process that loads it. */
async function addonOpens(root, onSpawn) {
  const script = "const D = require('better-sqlite3'); new D(':memory:').prepare('select 1').get();";
  const { code } = await runChild(process.execPath, ['-e', script], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe'],
    onSpawn,
  });
  return code === 0;
}

function readPackages(path) {
  const text = readText(path);
  return text === undefined ? undefined : JSON.parse(text).packages;
}

function readText(path) {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}
