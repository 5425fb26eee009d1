import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { runChild } from '../../app/_start/run-child.mjs';

const remedy =
  'Chromium was not found: install it (on Debian: apt-get install chromium), or set CHROMIUM_PATH to it, or set SKIP_BROWSER=1 to leave the browser tests out';

/** Finds Chromium, installing it where that can be done: `{ path }`, or `{ remedy }` in a sentence. */
export async function findChromium(env) {
  if (env.CHROMIUM_PATH) {
    if (isExecutable(env.CHROMIUM_PATH)) return { path: env.CHROMIUM_PATH };
    return { remedy: `CHROMIUM_PATH names ${env.CHROMIUM_PATH}, which cannot be run: correct or unset it` };
  }
  const found = search(env, ['chromium', 'chromium-browser']);
  if (found) return { path: found };
  if (process.getuid?.() === 0 && search(env, ['apt-get'])) {
    console.log('Installing Chromium for the browser tests.');
    const quiet = {
      env: { ...env, DEBIAN_FRONTEND: 'noninteractive' },
      stdio: ['ignore', 'ignore', 'inherit'],
    };
    await runChild('apt-get', ['update', '-q'], quiet);
    await runChild('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium'], quiet);
  }
  const installed = search(env, ['chromium', 'chromium-browser']);
  return installed ? { path: installed } : { remedy };
}

function search(env, names) {
  const folders = [...(env.PATH ?? '').split(delimiter), '/usr/bin'].filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(isExecutable);
}

function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
