import { constants } from 'node:os';
import { setTimeout as wait } from 'node:timers/promises';
import { withKnownName } from './known-name.mjs';
import { withPagePolicy } from './page-policy.mjs';
import { withReadableAddress } from './readable-address.mjs';

const patienceMs = 3000;

/** Lets Next answer at every front door, the first of which is plain http, in this process: one process to start and one to end. */
export async function serve(root, doors, { host, names }) {
  const [door] = doors;
  process.env.NODE_ENV = 'production';
  process.env.NEXT_TELEMETRY_DISABLED = '1';
  process.env.PORT = String(door.port);
  process.env.__NEXT_PRIVATE_ORIGIN = door.address;
  const { default: next } = await import('next');
  const app = next({
    dev: false,
    dir: root,
    hostname: host,
    port: door.port,
    httpServer: door.server,
    // Not quiet: it would also keep every fault of a page or an answer to itself, and the screens send people here.
    quiet: false,
  });
  await app.prepare();
  const handle = withKnownName(withReadableAddress(withPagePolicy(app.getRequestHandler())), names);
  for (const each of doors) each.serve(handle);
  return app;
}

/** Ends on Ctrl-C, TERM or a closed terminal: answers what is under way for up to three seconds; a second signal ends at once. */
export function endOnSignal(doors, app) {
  let ending = false;
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    process.on(signal, async () => {
      const code = 128 + constants.signals[signal];
      if (ending) process.exit(code);
      ending = true;
      const closed = Promise.all(doors.map(({ server }) => new Promise((resolve) => server.close(resolve))));
      for (const { server } of doors) server.closeIdleConnections();
      await Promise.race([closed, wait(patienceMs)]);
      for (const { server } of doors) server.closeAllConnections();
      await Promise.race([app.close(), wait(patienceMs)]);
      await closeShop();
      process.exit(code);
    });
  }
}

/**
 * Closes the database that db/client.ts holds open. The last entries then move from its side file into the one file that
 * people copy; left open, a copy of that file alone would lack them. Whoever else reads it lets go first.
 */
async function closeShop() {
  await Promise.race([globalThis[Symbol.for('edgekeep.figures')]?.end(), wait(patienceMs)]);
  globalThis[Symbol.for('edgekeep.opened-shop')]?.db.$client.close();
}
