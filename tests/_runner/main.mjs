import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureBuilt } from '../../app/_start/build.mjs';
import { withCheckoutLock } from '../../app/_start/checkout-lock.mjs';
import { ensureInstalled } from '../../app/_start/install.mjs';
import { Refused, reportEnd } from '../../app/_start/refused.mjs';
import { findChromium } from './chromium.mjs';
import { countBrowserTests, runTool, runVitest } from './steps.mjs';
import { emptyTally, lastLine, record } from './tally.mjs';

const root = resolve(fileURLToPath(new URL('../../', import.meta.url)));
const browserConfig = 'tests/app/browser/vitest.config.ts';
const startConfig = 'tests/faults/vitest.config.ts';

/** The whole of `npm test`; `--quick` leaves out the build and everything that needs it. */
export async function main(argv, env) {
  try {
    if (argv.some((flag) => flag !== '--quick')) throw new Refused('npm test knows one flag, --quick.');
    await withCheckoutLock(root, (noteChild) => ensureInstalled(root, { noteChild }));
    const tally = emptyTally();
    await checkSource(tally);
    if (argv.includes('--quick'))
      console.log('Left out by --quick: the build, the start tests and the browser tests.');
    else await checkRunning(tally, env);
    console.log(lastLine(tally));
    process.exit(tally.failed > 0 || tally.passed === 0 ? 1 : 0);
  } catch (error) {
    reportEnd(error);
    console.log(lastLine({ passed: 0, failed: 1, skipped: 0 }));
    process.exit(1);
  }
}

async function checkSource(tally) {
  record(tally, 'Lint', await runTool(root, 'node_modules/@biomejs/biome/bin/biome', ['check']));
  const typegen = await runTool(root, 'node_modules/next/dist/bin/next', ['typegen'], { quiet: true });
  record(
    tally,
    'Types',
    typegen.failed ? typegen : await runTool(root, 'node_modules/typescript/bin/tsc', ['--noEmit']),
  );
  record(
    tally,
    'Unit, database, external-check and fault tests',
    await runVitest(root, ['--config', 'vitest.config.ts']),
  );
}

async function checkRunning(tally, env) {
  const build = await withCheckoutLock(root, (noteChild) => tryToBuild(noteChild));
  record(tally, 'Build', build);
  if (build.failed) {
    record(tally, 'Start and browser tests', {
      passed: 0,
      failed: 1,
      skipped: 0,
      why: 'there is no build to run them on',
    });
    return;
  }
  record(tally, 'Start tests', await runVitest(root, ['--config', startConfig]));
  record(tally, 'Browser tests', await browserTests(env));
}

async function tryToBuild(noteChild) {
  try {
    await ensureBuilt(root, { noteChild });
    return { passed: 1, failed: 0, skipped: 0 };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    console.log(error.message);
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

async function browserTests(env) {
  if (env.SKIP_BROWSER === '1') {
    return {
      passed: 0,
      failed: 0,
      skipped: countBrowserTests(root),
      why: 'LEFT OUT because SKIP_BROWSER=1 is set',
    };
  }
  const chromium = await findChromium(env);
  if (!chromium.path) return { passed: 0, failed: 1, skipped: 0, why: chromium.remedy };
  return runVitest(root, ['--config', browserConfig, 'tests/app/browser'], { CHROMIUM_PATH: chromium.path });
}
