import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { findChromium } from './chromium.mjs';
import { countBrowserTests, countReport } from './steps.mjs';
import { emptyTally, lastLine, record } from './tally.mjs';

const file = (status: string, ...tests: string[]) => ({
  status,
  assertionResults: tests.map((test) => ({ status: test })),
});

describe('the count of npm test', () => {
  it('adds up files', () => {
    const report = {
      testResults: [file('passed', 'passed', 'passed'), file('failed', 'failed', 'passed', 'pending')],
    };
    expect(countReport(report, 1)).toEqual({ passed: 3, failed: 1, skipped: 1 });
  });

  it('counts a file that did not load as failed', () => {
    expect(countReport({ testResults: [file('failed'), file('passed', 'passed')] }, 1)).toMatchObject({
      passed: 1,
      failed: 1,
    });
  });

  it('counts a bad end without a failed test, and a missing report, as failed', () => {
    expect(countReport({ testResults: [file('passed', 'passed')] }, 1)).toMatchObject({
      passed: 1,
      failed: 1,
    });
    expect(countReport(undefined, 0)).toMatchObject({ passed: 0, failed: 1 });
  });

  it('takes a step that ran nothing for failed', () => {
    const log = vi.spyOn(console, 'log').mockImplementation(() => undefined);
    const tally = emptyTally();
    record(tally, 'Unit tests', countReport({ testResults: [] }, 0));
    expect(tally).toEqual({ passed: 0, failed: 1, skipped: 0 });
    record(tally, 'Lint', { passed: 1, failed: 0, skipped: 0 });
    expect(tally).toEqual({ passed: 1, failed: 1, skipped: 0 });
    expect(log).toHaveBeenCalledTimes(2);
  });

  it('ends in the line asked for', () => {
    expect(lastLine({ passed: 12, failed: 0, skipped: 0 })).toBe('12 passed, 0 failed');
    expect(lastLine({ passed: 12, failed: 1, skipped: 3 })).toBe('12 passed, 1 failed, 3 skipped');
  });

  it('knows how many browser tests are written', () => {
    expect(countBrowserTests(process.cwd())).toBeGreaterThan(0);
  });
});

describe('Chromium', () => {
  const folder = mkdtempSync(join(tmpdir(), 'edgekeep-chromium-'));
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it('is refused with the remedy when the variable names nothing that runs', async () => {
    const { path, remedy } = await findChromium({ CHROMIUM_PATH: join(folder, 'nothing') });
    expect(path).toBeUndefined();
    expect(remedy).toContain('cannot be run: correct or unset it');
  });

  it('is taken from the variable when that can be run', async () => {
    expect(await findChromium({ CHROMIUM_PATH: process.execPath })).toEqual({ path: process.execPath });
  });
});

it('npm test refuses an unknown flag and still ends in its line', () => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['tests/_runner/run.mjs', '--bogus'], {
    encoding: 'utf8',
  });
  expect(status).toBe(1);
  expect(stderr.trim()).toBe('npm test knows one flag, --quick.');
  expect(stdout.trim().split('\n').at(-1)).toBe('0 passed, 1 failed');
});
