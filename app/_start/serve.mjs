import { constants } from 'node:os';
import { setTimeout as wait } from 'node:timers/promises';
import { withPagePolicy } from './page-policy.mjs';

const patienceMs = 3000;

/** Lets Next answer at the front door, in this process: one process to start and one to end. */
export async function serve(root, door, host) {
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
    quiet: true,
  });
  await app.prepare();
  door.serve(withPagePolicy(app.getRequestHandler()));
  return app;
}

/** Ends on Ctrl-C, TERM or a closed terminal: answers what is under way for up to three seconds; a second signal ends at once. */
export function endOnSignal(door, app) {
  let ending = false;
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    process.on(signal, async () => {
      const code = 128 + constants.signals[signal];
      if (ending) process.exit(code);
      ending = true;
      const closed = new Promise((resolve) => door.server.close(resolve));
      door.server.closeIdleConnections();
      await Promise.race([closed, wait(patienceMs)]);
      door.server.closeAllConnections();
      await Promise.race([app.close(), wait(patienceMs)]);
      process.exit(code);
    });
  }
}
