// node tests/_runner/pictures.mjs: takes the pictures of the README anew, from the built program on a demo shop of its own.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';

const root = resolve(fileURLToPath(new URL('../../', import.meta.url)));
const folder = join(root, 'public', 'pictures');
const bytesMax = 250_000;
/** A desktop window, taken at five sixths: 1200 by 800 in the picture. */
const look = { viewport: { width: 1440, height: 960 }, deviceScaleFactor: 5 / 6, colorScheme: 'light' };

/** What each picture shows: how to come there, and the panel that stands at its top; the top of the page if none is named. */
const pictures = {
  today: { open: (page) => page.goto('/'), heightPx: 1230 },
  tool: { open: (page) => page.goto('/tools/D-38-11') },
  plan: { open: (page) => page.goto('/plan'), from: 'Cannot make now' },
  kit: { open: (page) => page.goto('/crib/issue/J-088.1') },
  orders: { open: (page) => page.goto('/plan/orders') },
  replace: { open: (page) => page.goto('/plan/replace') },
  gauge: { open: (page) => page.goto('/gauges/G-38-GO-1') },
  size: { open: (page) => page.goto('/sizes'), from: /9 sixteenths.*medium/ },
  import: { open: checkJobs, from: 'Jobs from jobs.csv' },
};

async function checkJobs(page) {
  await page.goto('/import');
  await page.getByLabel('The file').setInputFiles(join(root, 'public', 'examples', 'jobs.csv'));
  await page.getByRole('button', { name: 'Check the file' }).click();
  await page.getByText('rows would be imported').waitFor();
}

async function take(address, executablePath) {
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const context = await browser.newContext({ ...look, baseURL: address });
    const page = await context.newPage();
    await page.goto('/who');
    await page.getByRole('button', { name: /^Lead-1\b/ }).click();
    await page.getByRole('link', { name: 'Acting as Lead-1' }).waitFor();
    mkdirSync(folder, { recursive: true });
    for (const [name, picture] of Object.entries(pictures)) await takeOne(page, name, picture);
  } finally {
    await browser.close();
  }
}

const GAP_PX = 32;

function toTop(node, gapPx) {
  window.scrollTo(0, node.getBoundingClientRect().top + window.scrollY - gapPx);
}

async function takeOne(page, name, { open, from, heightPx = look.viewport.height }) {
  const path = join(folder, `${name}.png`);
  await page.setViewportSize({ ...look.viewport, height: heightPx });
  await open(page);
  await page.evaluate(() => document.fonts.ready);
  if (from === undefined) await page.evaluate(() => window.scrollTo(0, 0));
  else await page.getByRole('region', { name: from }).evaluate(toTop, GAP_PX);
  await page.mouse.move(0, 0);
  await page.screenshot({ path, animations: 'disabled', caret: 'hide' });
  const { size: bytes } = statSync(path);
  console.log(`${name}.png, ${Math.round(bytes / 1000)} kB`);
  if (bytes > bytesMax) throw new Error(`${name}.png is larger than ${bytesMax / 1000} kB.`);
}

/** Starts the program on an empty folder and gives its address once it serves. */
function start(dataDir) {
  const args = ['app/_start/start.mjs', '--port', '0', '--data', dataDir, '--demo'];
  const server = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] });
  const address = new Promise((found, failed) => {
    let said = '';
    server.stdout.on('data', (text) => {
      said += text;
      const line = /^Edgekeep is at (http:\S+)$/m.exec(said);
      if (line) found(line[1]);
    });
    server.on('close', () => failed(new Error(`The program did not start:\n${said}`)));
  });
  return { server, address };
}

const dataDir = mkdtempSync(join(tmpdir(), 'edgekeep-pictures-'));
const { server, address } = start(dataDir);
try {
  const { path, remedy } = await findChromium(process.env);
  if (!path) throw new Error(remedy);
  await take(await address, path);
} finally {
  server.removeAllListeners('close');
  const ended = new Promise((done) => server.once('exit', done));
  server.kill('SIGTERM');
  await ended;
  rmSync(dataDir, { recursive: true, force: true });
}
