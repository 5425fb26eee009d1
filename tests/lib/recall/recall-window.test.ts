import { describe, expect, it } from 'vitest';
import type { Evidence } from '@/lib/gauge/last-good-evidence';
import { isInWindow, recallWindow } from '@/lib/recall/recall-window';

const DAY_MS = 86_400_000;
const T0 = Date.UTC(2026, 0, 1, 12);
const day = (n: number) => new Date(T0 + n * DAY_MS).toISOString().slice(0, 10);
const at = (n: number) => T0 + n * DAY_MS;

function calibration(n: number, asFound: 'in' | 'out' | 'not-taken', asLeft: 'in' | 'out' = 'in'): Evidence {
  const moment = { onDay: day(n), atMs: at(n) };
  return { entryId: `cal-${n}`, kind: 'calibration', ...moment, asFound, asLeft, qualifies: true };
}

function interim(n: number, qualifies: boolean, result: 'in' | 'out' = 'in'): Evidence {
  const moment = { onDay: day(n), atMs: at(n) };
  return { entryId: `chk-${n}`, kind: 'interim', ...moment, asFound: result, asLeft: result, qualifies };
}

const found = (n: number, entryId: string | null = null) => ({ entryId, onDay: day(n), atMs: at(n) });

// source: hand. Each history is read by a person: where was it last known good before day 100?
describe('the window opens at the last good evidence, never at the due date', () => {
  it.each([
    [
      'the last as-found-good calibration',
      [calibration(0, 'in'), calibration(50, 'in')],
      'as-found',
      'cal-50',
    ],
    ['a documented check after it', [calibration(0, 'in'), interim(70, true)], 'interim', 'chk-70'],
    ['not a check that does not count', [calibration(0, 'in'), interim(70, false)], 'as-found', 'cal-0'],
    ['not a check that failed', [calibration(0, 'in'), interim(70, true, 'out')], 'as-found', 'cal-0'],
    [
      'past a certificate without as-found data',
      [calibration(0, 'in'), calibration(50, 'not-taken')],
      'as-found',
      'cal-0',
    ],
    [
      'back to how the certificate before left it',
      [calibration(0, 'not-taken'), calibration(50, 'not-taken')],
      'as-left',
      'cal-0',
    ],
    [
      'a check between two such certificates is better',
      [calibration(0, 'not-taken'), interim(30, true), calibration(50, 'not-taken')],
      'interim',
      'chk-30',
    ],
    [
      'found out and adjusted: good from then on',
      [calibration(0, 'in'), calibration(50, 'out')],
      'as-left',
      'cal-50',
    ],
    [
      'left out: no evidence of good',
      [calibration(0, 'in'), calibration(50, 'out', 'out')],
      'as-found',
      'cal-0',
    ],
    [
      'one certificate without as-found data and nothing before',
      [calibration(50, 'not-taken')],
      'none',
      null,
    ],
    ['nothing at all', [], 'none', null],
    ['not what came after the finding', [calibration(0, 'in'), calibration(120, 'in')], 'as-found', 'cal-0'],
  ] as const)('%s', (_what, evidence, kind, entryId) => {
    const window = recallWindow(evidence, found(100));
    expect([window.evidence, window.evidenceEntryId]).toEqual([kind, entryId]);
    expect(window.windowToMs).toBe(at(100));
  });

  it('the calibration that showed the fault is no evidence for itself, whatever the order of entry', () => {
    const failing = calibration(100, 'out');
    expect(recallWindow([failing, calibration(0, 'in')], found(100, 'cal-100')).evidenceEntryId).toBe(
      'cal-0',
    );
  });
});

describe('an end is in the window', () => {
  const window = recallWindow([calibration(0, 'in')], found(100));
  // source: hand. Evidence on day 0 at noon, finding on day 100 at noon.
  it.each([
    ['the day before the evidence', -1, false],
    ['on its day, before it by the clock', -0.1, false],
    ['on its day, after it', 0.1, true],
    ['between', 50, true],
    ['at the finding', 100, true],
    ['after the finding', 100.1, false],
  ])('%s', (_when, n, inside) => {
    expect(isInWindow({ onDay: day(n), atMs: at(n) }, window)).toBe(inside);
  });

  it('all of the evidence’s day, where it was entered on a later day than its own', () => {
    const late = { ...calibration(0, 'in'), atMs: at(3) };
    const opened = recallWindow([late], found(100));
    expect(isInWindow({ onDay: day(0), atMs: at(-0.2) }, opened)).toBe(true);
    expect(isInWindow({ onDay: day(-1), atMs: at(-1) }, opened)).toBe(false);
  });

  it('every end ever, where nothing shows that it was good', () => {
    const opened = recallWindow([], found(100));
    expect(isInWindow({ onDay: day(-3000), atMs: at(-3000) }, opened)).toBe(true);
  });
});
