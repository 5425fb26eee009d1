// node tests/_runner/icons.mjs: draws the icons of the home screen anew from app/icon.svg, full to the edge as launchers want them.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';

const root = resolve(fileURLToPath(new URL('../../', import.meta.url)));
const folder = join(root, 'public', 'icons');
const square = (svg) => svg.replace(/ rx="[\d.]+"/, '');
const drawing = square(readFileSync(join(root, 'app', 'icon.svg'), 'utf8'));

const { path, remedy } = await findChromium(process.env);
if (!path) throw new Error(remedy);
const browser = await chromium.launch({ executablePath: path, args: ['--no-sandbox', '--disable-gpu'] });
try {
  mkdirSync(folder, { recursive: true });
  for (const side of [192, 512]) {
    const page = await browser.newPage({ viewport: { width: side, height: side } });
    await page.setContent(`<style>body { margin: 0 } svg { display: block; width: 100vw }</style>${drawing}`);
    writeFileSync(join(folder, `icon-${side}.png`), await page.screenshot());
    await page.close();
  }
} finally {
  await browser.close();
}
