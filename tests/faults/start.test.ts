import { once } from 'node:events';
import { chmodSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { get } from 'node:http';
import { createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { copyDemo } from '../support/demo-file';
import { type Ended, endLeftovers, runStart, startServer } from '../support/server';

let dataDir: string;
beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'edgekeep-start-'));
});
afterEach(async () => {
  await endLeftovers();
  rmSync(dataDir, { recursive: true, force: true });
});

/** Ended by a refusal: one sentence on the error output, no stack, no address, a code that is not zero. */
function expectRefusal(ended: Ended, sentence: RegExp): void {
  expect(ended.errors.trim()).toMatch(sentence);
  expect(ended.errors.trim().split('\n')).toHaveLength(1);
  expect(ended.errors).not.toMatch(/\n\s+at /);
  expect(ended.output).not.toContain('Edgekeep is at');
  expect(ended.code).toBe(1);
}

async function listen(port: number): Promise<Server> {
  const server = createServer().listen(port, '127.0.0.1');
  await once(server, 'listening');
  return server;
}

/** The status of a request that a browser would send when this name leads here. */
function statusUnder(name: string, port: number): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const request = get({ host: '127.0.0.1', port, path: '/who', headers: { host: `${name}:${port}` } });
    request.on('error', reject);
    request.on('response', (response) => {
      response.resume();
      resolve(response.statusCode);
    });
  });
}

function portOf(address: string): number {
  return Number(new URL(address).port);
}

describe('a start is refused in one sentence', () => {
  it('when the port is in use, naming it and the flag for another', async () => {
    const server = await listen(0);
    const taken = server.address();
    const port = typeof taken === 'object' && taken ? taken.port : 0;
    const ended = await runStart({ dataDir, flags: ['--port', String(port)] });
    server.close();
    expectRefusal(ended, new RegExp(`^Port ${port} on 127\\.0\\.0\\.1 is in use: .*--port \\d+\\.$`));
  });

  it('when a newer Edgekeep wrote the database, which stays as it was', async () => {
    const path = join(dataDir, 'demo.sqlite');
    const newer = new SqliteDatabase(path);
    newer.pragma('user_version = 9999');
    newer.close();
    expectRefusal(await runStart({ dataDir }), /9999.*newer Edgekeep.*\.$/);
    const after = new SqliteDatabase(path);
    expect(after.pragma('user_version', { simple: true })).toBe(9999);
    expect(after.prepare('select count(*) from sqlite_master').pluck().get()).toBe(0);
    after.close();
  });

  it('when the database is no database', async () => {
    writeFileSync(
      join(dataDir, 'demo.sqlite'),
      'not a database, but long enough to be taken for the head of one'.repeat(20),
    );
    expectRefusal(await runStart({ dataDir }), /is not an SQLite database: .*\.$/);
  });

  it('when the choice of shop is unreadable, instead of showing the demo', async () => {
    writeFileSync(join(dataDir, 'open-shop'), 'neither');
    expectRefusal(await runStart({ dataDir }), /must hold the word "demo" or "shop", and holds neither\.$/);
  });

  it('when the data folder is a file, or lies below one', async () => {
    const file = join(dataDir, 'file');
    writeFileSync(file, '');
    expectRefusal(await runStart({ dataDir: file }), /is a file or lies below one: .*--data DIR\.$/);
    expectRefusal(
      await runStart({ dataDir: join(file, 'below') }),
      /is a file or lies below one: .*--data DIR\.$/,
    );
  });

  it('when the data folder is read-only', async () => {
    // Rights do not bind root; the kernel's own folder refuses it all the same.
    const asRoot = process.getuid?.() === 0;
    const readOnly = asRoot ? '/sys' : dataDir;
    if (!asRoot) chmodSync(readOnly, 0o555);
    const ended = await runStart({ dataDir: readOnly });
    if (!asRoot) chmodSync(readOnly, 0o755);
    expectRefusal(ended, /^The data folder \S+ cannot be written \(E\w+\): .*--data DIR\.$/);
  });

  it('when a flag or a port is not one', async () => {
    expectRefusal(await runStart({ dataDir, flags: ['--prot'] }), /^Unknown option '--prot': .*--help.*\.$/);
    expectRefusal(await runStart({ dataDir, flags: ['--port', 'many'] }), /^"many" is not a port: .*\.$/);
    expectRefusal(
      await runStart({ dataDir, flags: ['--host', 'no-such-host.invalid'] }),
      /^This machine has no address .*\.$/,
    );
  });

  it.each(['v18.20.8', 'v24.19.0'])('under Node %s, saying which works', async (version) => {
    const preload = `--import=data:text/javascript,Object.defineProperty(process,'version',{value:'${version}'})`;
    const ended = await runStart({ dataDir, env: { NODE_OPTIONS: preload } });
    expectRefusal(
      ended,
      new RegExp(`^Edgekeep does not run on Node ${version}: use Node 20\\.9 or newer and below 24\\.19`),
    );
  });
});

describe('a server', () => {
  it('prints one address, answers there, and ends cleanly on Ctrl-C with its port free', async () => {
    const server = await startServer({ dataDir });
    expect(server.output().match(/https?:\/\/\S+/g)).toEqual([server.address]);
    expect(await (await fetch(server.address)).text()).toContain('<html');
    const ended = await server.stop('SIGINT');
    expect([0, 130]).toContain(ended.code);
    expect(ended.errors).toBe('');
    (await listen(portOf(server.address))).close();
  });

  it('ends on TERM while a browser keeps a connection open', async () => {
    copyDemo(dataDir);
    const server = await startServer({ dataDir });
    await (await fetch(server.address, { headers: { connection: 'keep-alive' } })).text();
    const began = performance.now();
    expect((await server.stop('SIGTERM')).code).toBe(143);
    expect(performance.now() - began).toBeLessThan(5000);
  });

  // source: hand. People copy the file that carries the shop's name; what lies beside it is not to hold entries then.
  it('leaves its database in one file when it ends', async () => {
    copyDemo(dataDir);
    const server = await startServer({ dataDir });
    await (await fetch(server.address)).text();
    await server.stop();
    expect(readdirSync(dataDir).sort()).toEqual(['demo.sqlite', 'open-shop']);
  });

  // source: hand. A page of another site whose name leads here must be answered nothing of the shop's.
  it('answers under the names of this machine, and under another only when it was given', async () => {
    copyDemo(dataDir);
    const server = await startServer({ dataDir, flags: ['--name', 'crib.shop.example'] });
    const port = portOf(server.address);
    expect(await statusUnder('evil.example', port)).toBe(421);
    expect(await statusUnder('crib.shop.example', port)).toBe(200);
    expect(await statusUnder('localhost', port)).toBe(200);
    await server.stop();
  });

  // source: hand. The screens send people to the window for what is wrong, so it must stand there.
  it('says in its window why a page could not be shown', async () => {
    copyDemo(dataDir);
    const server = await startServer({ dataDir });
    expect((await fetch(server.address)).status).toBe(200);
    rmSync(join(dataDir, 'demo.sqlite'));
    const gone = await fetch(`${server.address}/tools`);
    expect(gone.status).toBe(500);
    expect(await gone.text()).not.toContain(dataDir);
    const ended = await server.stop();
    expect(ended.errors).toContain('demo.sqlite in the data folder was moved, removed or replaced');
  });

  it('starts again after it was killed, and remembers the shop of one’s own until the demo is asked for', async () => {
    copyDemo(dataDir);
    const own = await startServer({ dataDir, flags: ['--empty'] });
    expect(own.output()).toContain('your own shop');
    expect(readdirSync(dataDir)).toEqual(expect.arrayContaining(['demo.sqlite', 'shop.sqlite']));
    await own.stop('SIGKILL');
    const again = await startServer({ dataDir });
    expect(again.output()).toContain('your own shop');
    await again.stop();
    const demo = await startServer({ dataDir, flags: ['--demo'] });
    expect(demo.output()).toContain('the demo shop');
    await demo.stop();
  });

  it('shares a new data folder with another that starts at the same moment', async () => {
    const both = await Promise.all([startServer({ dataDir }), startServer({ dataDir })]);
    for (const server of both) expect(await (await fetch(server.address)).text()).toContain('<html');
    await Promise.all(both.map((server) => server.stop()));
    expect(readdirSync(dataDir).filter((name) => name.includes('filling'))).toEqual([]);
  });
});
