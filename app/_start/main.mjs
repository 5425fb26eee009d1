import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureBuilt, isBuilt } from './build.mjs';
import { withCheckoutLock } from './checkout-lock.mjs';
import { ensureDataFolder } from './data-folder.mjs';
import { prepareDatabase } from './database.mjs';
import { openFrontDoor } from './front-door.mjs';
import { certify, openSecureDoor, tabletLines } from './https-door.mjs';
import { ensureInstalled } from './install.mjs';
import { helpText, readOptions } from './options.mjs';
import { reportEnd } from './refused.mjs';
import { noteServer, refuseUnderRunningServer } from './running-servers.mjs';
import { endOnSignal, serve } from './serve.mjs';

export const root = resolve(fileURLToPath(new URL('../../', import.meta.url)));

const shopNames = { demo: 'the demo shop (invented)', shop: 'your own shop' };

/** The whole of `npm start`, cheapest refusals first. */
export async function main(argv, env) {
  try {
    process.chdir(root);
    const options = readOptions(argv, env, root);
    if (options.help) console.log(helpText);
    else await start(options);
  } catch (error) {
    process.exit(reportEnd(error));
  }
}

async function start(options) {
  ensureDataFolder(options.dataDir);
  const door = await openFrontDoor(options);
  const secureDoor = await openSecureDoor(options);
  const shop = await withCheckoutLock(root, async (noteChild) => {
    await ensureInstalled(root, { noteChild });
    if (!isBuilt(root)) refuseUnderRunningServer(root, 'its pages have changed');
    const served = await prepareDatabase(root, options, noteChild);
    await ensureBuilt(root, { noteChild });
    if (secureDoor) await certify(secureDoor, options, door);
    noteServer(root, door.address);
    return served;
  });
  process.env.EDGEKEEP_DATA = options.dataDir;
  const doors = secureDoor ? [door, secureDoor] : [door];
  const app = await serve(root, doors, options);
  endOnSignal(doors, app);
  console.log(`Serving ${shopNames[shop]} from ${options.dataDir}. Ctrl-C stops it.`);
  if (secureDoor) console.log(tabletLines(secureDoor));
  console.log(`Edgekeep is at ${door.address}`);
}
