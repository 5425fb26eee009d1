import { mkdtempSync, rmSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { axeViolations, launchBrowser, viewports, watchedPage } from '../../support/browser';
import { copyDemo } from '../../support/demo-file';
import { endLeftovers, type RunningServer, startServer } from '../../support/server';

let dataDir: string;
let browser: Browser;
let server: RunningServer;
let port: number;
beforeAll(async () => {
  dataDir = mkdtempSync(join(tmpdir(), 'edgekeep-https-'));
  browser = await launchBrowser();
  copyDemo(dataDir);
  server = await startServer({ dataDir, flags: ['--https', '--name', 'tools.shop.example'] });
  port = Number(/^With https it is at https:\/\/\S+?:(\d+)\b/m.exec(server.output())?.[1]);
});
afterAll(async () => {
  await browser.close();
  await endLeftovers();
  rmSync(dataDir, { recursive: true, force: true });
});

it('serves the same program over both, and offers the certificate with its fingerprint', async () => {
  // The browser is told to overlook what it does not know: that the chain holds is proved in tests/app/_start.
  const context = await browser.newContext({ ...viewports.tablet, ignoreHTTPSErrors: true });
  const { page, faults } = await watchedPage(context);
  await page.goto(`https://127.0.0.1:${port}/who`);
  await page.getByRole('button', { name: /^Tech-1\b/ }).click();
  await page.getByRole('link', { name: 'Acting as Tech-1' }).waitFor();
  expect(new URL(page.url()).protocol).toBe('https:');
  expect(await page.evaluate(() => isSecureContext)).toBe(true);
  const answer = await page.goto(`https://127.0.0.1:${port}/trust`);
  expect(answer?.headers()['strict-transport-security']).toBeUndefined();
  await page.getByRole('heading', { name: 'Tablets', level: 1 }).waitFor();
  expect(await axeViolations(page)).toEqual([]);
  expect(faults).toEqual([]);
  await context.close();
  expect((await fetch(`${server.address}/trust/certificate`)).headers.get('content-type')).toBe(
    'application/x-x509-ca-cert',
  );
  expect(server.output()).not.toContain('PRIVATE');
});

it('ends both with one signal', async () => {
  const ended = await server.stop();
  // source: published. POSIX shells give 128 + the signal's number; SIGTERM is 15.
  expect(ended.code).toBe(143);
  for (const taken of [port, Number(new URL(server.address).port)]) {
    const refused = new Promise((resolve) => {
      connect(taken, '127.0.0.1').on('error', ({ message }) => resolve(message));
    });
    expect(await refused).toContain('ECONNREFUSED');
  }
});
