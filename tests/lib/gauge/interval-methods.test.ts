import { expect, it } from 'vitest';
import type { FeatureHistory } from '@/lib/gauge/drift-points';
import {
  controlChartAdvice,
  driftAdvice,
  type IntervalResult,
  inServiceAdvice,
  inUseAdvice,
  staircaseAdvice,
  statisticsAdvice,
} from '@/lib/gauge/interval-methods';

const result = (over: Partial<IntervalResult> = {}): IntervalResult => ({
  ...{ onDay: '2026-01-01', asFound: 'in', days: 300, ends: 400, share: 0.4 },
  ...over,
});
const history = (...errors: number[]): FeatureHistory => ({
  ...{ feature: 'pitch diameter', unit: 'um', lower: -4, upper: 4, halfWidth: 4, firstDay: '2025-01-01' },
  points: errors.map((error, i) => ({
    ...{ at: 300 * i, onDay: '2025-01-01', error, standardUncertainty: 0.3, segment: 1 },
  })),
});

// source: common practice, no source. Up by a quarter, down by half, comfortable within four fifths.
it.each([
  [[], null],
  [[result()], 300],
  [[result(), result()], 375],
  [[result(), result({ share: 0.9 })], 300],
  [[result({ share: 0.9 }), result()], 300],
  [[result({ share: null }), result({ share: null })], 375],
  [[result(), result({ asFound: 'not-taken' })], 300],
  [[result(), result({ asFound: 'out' })], 150],
] as [IntervalResult[], number | null][])('staircase %#: %s', (results, days) => {
  expect(staircaseAdvice(results, 300).days).toBe(days);
});

// source: hand. 0, 1, 2 in steps of 300 days: no spread, 1/300 a day, from 2 to the limit 4 in 600 days.
it('control chart: as fast as it has moved', () => {
  expect(controlChartAdvice(history(0, 1, 2)).days).toBe(600);
  expect(controlChartAdvice(history(0, -1, -2)).days).toBe(600);
  expect(controlChartAdvice(history(0, 1)).days).toBeNull();
  expect(controlChartAdvice(undefined).days).toBeNull();
});

// source: hand. Changes 1 and 3 in 300 days: mean 2, deviation √2, so at most (2 + 2√2)/300 a day from 4 − 4.
it('control chart: a wider spread comes sooner', () => {
  const steady = controlChartAdvice(history(-2, -1, 0)).days ?? 0;
  const uneven = controlChartAdvice(history(-2, -1.9, 0)).days ?? 0;
  expect(uneven).toBeLessThan(steady);
  expect(uneven).toBe(Math.floor(4 / ((1 + 2 * 0.9 * Math.SQRT2) / 300)));
});

// source: hand.
it('in use: what it has borne, or four fifths of what it has not', () => {
  expect(inUseAdvice([result({ ends: 410 }), result({ ends: 380 })]).ends).toBe(410);
  expect(inUseAdvice([result({ ends: 410 }), result({ ends: 500, asFound: 'out' })]).ends).toBe(400);
  expect(inUseAdvice([result({ ends: null })]).ends).toBeNull();
});

it('in service: a failed check is a limit, passed ones carry the interval', () => {
  expect(inServiceAdvice({ passed: 3, failedAfterDays: 120 }, 300).days).toBe(120);
  expect(inServiceAdvice({ passed: 2, failedAfterDays: null }, 300).days).toBe(300);
  expect(inServiceAdvice({ passed: 1, failedAfterDays: null }, 300).days).toBeNull();
});

// source: formula. 300 · ln 0.95 / ln 0.8 = 68.96: one in five out.
it('statistics: the share found in', () => {
  const four = [result(), result(), result(), result({ asFound: 'out' })];
  expect(statisticsAdvice([...four, result()], 0.95).days).toBe(68);
  expect(statisticsAdvice(four, 0.95).days).toBeNull();
  expect(statisticsAdvice(Array(6).fill(result()), 0.95).days).toBeNull();
  expect(statisticsAdvice([result({ days: null, asFound: 'out' })], 0.95).days).toBeNull();
});

// source: identity. A steady gauge gets longer than a drifting one, and a surer target never gets longer.
it('drift: steady goes longer', () => {
  const steady = driftAdvice(history(0, 0.1, -0.1, 0), 0.95).days ?? 0;
  const drifting = driftAdvice(history(0, 1, 2, 3), 0.95).days ?? 0;
  expect(steady).toBeGreaterThan(drifting);
  expect(driftAdvice(history(0, 0.1, -0.1, 0), 0.99).days ?? 0).toBeLessThanOrEqual(steady);
  expect(driftAdvice(undefined, 0.95).days).toBeNull();
  expect(driftAdvice(history(4.5), 0.95).why).toContain('have it adjusted');
  expect(driftAdvice(history(0, 9, -9, 0), 0.95).why).toContain('unevenly');
});
