import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, get as getPlain, type IncomingMessage, type Server } from 'node:http';
import { get } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openFrontDoor } from '@/app/_start/front-door.mjs';
import { certify, openSecureDoor, tabletLines } from '@/app/_start/https-door.mjs';
import { withKnownName } from '@/app/_start/known-name.mjs';
import { withPagePolicy } from '@/app/_start/page-policy.mjs';

let dir: string;
let servers: Server[];
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'edgekeep-door-'));
  servers = [];
});
afterEach(async () => {
  for (const server of servers) server.closeAllConnections();
  await Promise.all(servers.map((server) => new Promise((done) => server.close(done))));
  rmSync(dir, { recursive: true, force: true });
});

/** Both doors of a start with one small page behind them. */
async function openBoth() {
  const options = { host: '127.0.0.1', names: [], port: 0, httpsPort: 0, dataDir: dir };
  const plain = await openFrontDoor(options);
  const secure = await openSecureDoor(options);
  if (secure === undefined) throw new Error('no secure door');
  servers.push(plain.server, secure.server);
  await certify(secure, options, plain);
  const page = withKnownName(
    withPagePolicy((_request: IncomingMessage, response: { end: (text: string) => void }) => {
      response.end('page');
    }),
    [],
  );
  plain.serve(page);
  secure.serve(page);
  return { plain, secure };
}

interface Answer {
  readonly status: number;
  readonly text: string;
  readonly headers: IncomingMessage['headers'];
}

function answerOf(
  ask: (take: (response: IncomingMessage) => void) => ReturnType<typeof get>,
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    ask((response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (part) => {
        text += part;
      });
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, text, headers: response.headers }),
      );
    }).on('error', reject);
  });
}

const served = () =>
  Reflect.get(globalThis, Symbol.for('edgekeep.https')) as {
    authority: string;
    port: number;
    httpPort: number;
  };

/** A client that trusts these authorities and no other. */
const ask = (address: string, ca: string | undefined, host?: string) =>
  answerOf((take) =>
    get(address, { ca, agent: false, servername: 'localhost', headers: host ? { host } : {} }, take),
  );

describe('https beside http', () => {
  it('answers a client that trusts the shop authority, with the same page and policy', async () => {
    const { plain, secure } = await openBoth();
    const [overHttps, overHttp] = await Promise.all([
      ask(secure.address, served().authority),
      answerOf((take) => getPlain(plain.address, { agent: false }, take)),
    ]);
    expect([overHttps.text, overHttp.text]).toEqual(['page', 'page']);
    expect(secure.address).toMatch(/^https:\/\/127\.0\.0\.1:\d+$/);
    expect(overHttps.headers['content-security-policy']).toContain("worker-src 'self'");
    // The counter PC stays on plain http under the same name: an order to use https only would lock it out.
    expect(overHttps.headers['strict-transport-security']).toBeUndefined();
    expect(served()).toMatchObject({ port: secure.port, httpPort: plain.port });
  });

  // source: published. OpenSSL's names for a chain whose root is not trusted (X509_V_ERR_…).
  it('is refused by a client that does not know the authority', async () => {
    const { secure } = await openBoth();
    await expect(ask(secure.address, undefined)).rejects.toMatchObject({
      code: expect.stringMatching(/^(UNABLE_TO_VERIFY_LEAF_SIGNATURE|UNABLE_TO_GET_ISSUER_CERT_LOCALLY)$/),
    });
  });

  it('is refused by a client that trusts the authority of another shop', async () => {
    const { secure } = await openBoth();
    const { ensureServerCertificate } = await import('@/app/_start/server-certificate.mjs');
    const other = await ensureServerCertificate(join(dir, 'other'), ['localhost'], Date.now());
    await expect(ask(secure.address, other.authority)).rejects.toThrow();
  });

  it('answers under no name from outside', async () => {
    const { secure } = await openBoth();
    expect((await ask(secure.address, served().authority, 'evil.example')).status).toBe(421);
  });

  it('shows the new certificate once it is renewed, to those who trusted the old one', async () => {
    const { plain, secure } = await openBoth();
    const { authority } = served();
    const named = () =>
      answerOf((take) =>
        get(secure.address, { ca: authority, agent: false, servername: 'tools.shop.example' }, take),
      );
    await expect(named()).rejects.toMatchObject({ code: 'ERR_TLS_CERT_ALTNAME_INVALID' });
    await certify(secure, { host: '127.0.0.1', names: ['tools.shop.example'], dataDir: dir }, plain);
    expect((await named()).text).toBe('page');
  });

  it('tells the address and the fingerprint, and no secret', async () => {
    const { secure } = await openBoth();
    const told = tabletLines(secure);
    expect(told).toContain(secure.address);
    expect(told).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/m);
    expect(told).not.toMatch(/PRIVATE|BEGIN/);
  });
});

describe('the port of https', () => {
  it('is not opened unless asked for', async () => {
    expect(await openSecureDoor({ host: '127.0.0.1', httpsPort: undefined })).toBeUndefined();
  });

  it('in use is refused with its own flag', async () => {
    const other = createServer();
    servers.push(other);
    await new Promise<void>((done) => other.listen(0, '127.0.0.1', done));
    const address = other.address();
    const port = typeof address === 'object' ? (address?.port ?? 0) : 0;
    await expect(openSecureDoor({ host: '127.0.0.1', httpsPort: port })).rejects.toThrow(
      /in use: .* --https-port, for example npm start -- --https --https-port \d+\.$/,
    );
  });
});
