import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runChild } from '../../app/_start/run-child.mjs';

/** Runs a tool written for Node; counts as one, passed or failed. `quiet` shows its output only when it fails. */
export async function runTool(root, script, args, { quiet = false } = {}) {
  const stdio = quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'];
  const run = await runChild(process.execPath, [join(root, script), ...args], {
    cwd: root,
    env: toolEnv(),
    stdio,
  });
  if (quiet && run.code !== 0) console.log(`${run.stdout}${run.stderr}`);
  return run.code === 0 ? { passed: 1, failed: 0, skipped: 0 } : { passed: 0, failed: 1, skipped: 0 };
}

/** Runs Vitest and counts from its report, so that a run that ended badly cannot pass for a good one. */
export async function runVitest(root, args, env = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'edgekeep-report-'));
  const report = join(folder, 'report.json');
  try {
    const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
    const all = [vitest, 'run', ...args, '--reporter=dot', '--reporter=json', `--outputFile.json=${report}`];
    const stdio = ['ignore', 'inherit', 'inherit'];
    const { code } = await runChild(process.execPath, all, {
      cwd: root,
      env: { ...toolEnv(), ...env },
      stdio,
    });
    return countReport(readReport(report), code);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Counts tests, plus one for each file that failed without a failed test (it did not load), plus one for a bad end. */
export function countReport(report, code) {
  if (!report) return { passed: 0, failed: 1, skipped: 0, why: 'no report was written' };
  const outcome = { passed: 0, failed: 0, skipped: 0 };
  for (const file of report.testResults) {
    const failed = file.assertionResults.filter((test) => test.status === 'failed').length;
    const passed = file.assertionResults.filter((test) => test.status === 'passed').length;
    outcome.passed += passed;
    outcome.skipped += file.assertionResults.length - passed - failed;
    outcome.failed += file.status === 'failed' && failed === 0 ? 1 : failed;
  }
  if (code === 0 || outcome.failed > 0) return outcome;
  return { ...outcome, failed: 1, why: 'the run ended badly outside its tests' };
}

/** How many browser tests are written, for the count of those left out. */
export function countBrowserTests(root) {
  const folder = join(root, 'tests', 'app', 'browser');
  const files = readdirSync(folder, { recursive: true }).filter((name) => /\.test\.tsx?$/.test(name));
  const text = files.map((name) => readFileSync(join(folder, name), 'utf8')).join('\n');
  return [...text.matchAll(/^\s*(?:it|test)(?:\.\w+)*\(/gm)].length;
}

function toolEnv() {
  const env = { ...process.env, NEXT_TELEMETRY_DISABLED: '1' };
  delete env.NODE_ENV;
  delete env.EDGEKEEP_DATA;
  delete env.PORT;
  return env;
}

function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}
