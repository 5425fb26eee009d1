import { Refused } from './refused.mjs';
import { runChild } from './run-child.mjs';

const expectedRefusal = 3;

/** Migrates the database and on first run makes the demo shop. Gives back which shop is being served. */
export async function prepareDatabase(root, { dataDir, shop }, noteChild) {
  const env = { ...process.env, EDGEKEEP_DATA: dataDir };
  const args = ['--import', 'tsx', 'app/_start/prepare.ts', ...(shop ? [shop] : [])];
  const stdio = ['ignore', 'pipe', 'pipe'];
  const { code, stdout, stderr } = await runChild(process.execPath, args, {
    cwd: root,
    env,
    stdio,
    onSpawn: noteChild,
  });
  if (code === expectedRefusal) throw new Refused(stderr.trim());
  if (code !== 0)
    throw new Refused(`${stderr}\nThe database could not be prepared, as told above. Nothing was started.`);
  return stdout.trim();
}
