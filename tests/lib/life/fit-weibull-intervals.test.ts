import { expect, it } from 'vitest';
import { fitWeibull } from '@/lib/life/fit-weibull';
import { fitWeibullIntervals } from '@/lib/life/fit-weibull-intervals';
import { relativeMiss } from '@/tests/support/relative-miss';
import published from '../../fixtures/life/published.json';

const { time, status } = published.entries['A.weibull.nist20'].inputs;
const wornAt = time.filter((_, i) => status[i] === 1);
const workingAt = time.filter((_, i) => status[i] === 0);

function pair(sample: Parameters<typeof fitWeibullIntervals>[0]) {
  const [intervals, exact] = [fitWeibullIntervals(sample), fitWeibull({ wornAt, workingAt })];
  if (!intervals.ok || !exact.ok) throw new Error('both fit');
  return { intervals, exact };
}

// source: identity. Two routes to the same maximum: profile likelihood, and Newton on both figures.
it('equals the profile fit when every life is known exactly', () => {
  const { intervals, exact } = pair({ wornAt, workingAt });
  expect(relativeMiss(intervals.shape, exact.shape)).toBeLessThan(1e-10);
  expect(relativeMiss(intervals.scale, exact.scale)).toBeLessThan(1e-10);
  expect(Math.abs(intervals.logLik - exact.logLik)).toBeLessThan(1e-10);
  intervals.covariance.forEach((value, i) => {
    expect(relativeMiss(value, exact.covariance[i] ?? Number.NaN)).toBeLessThan(1e-8);
  });
});

// source: identity. An interval shrinking onto a life becomes that life; its middle is off by order width².
it('tends to the exact fit as the rows get shorter', () => {
  const wornBetween = wornAt.map((age) => ({ from: age - 1e-4, to: age + 1e-4 }));
  const { intervals, exact } = pair({ wornAt: [], workingAt, wornBetween });
  expect(relativeMiss(intervals.shape, exact.shape)).toBeLessThan(1e-8);
  expect(relativeMiss(intervals.scale, exact.scale)).toBeLessThan(1e-8);
});

it('refuses rows that settle no shape', () => {
  expect(fitWeibullIntervals({ wornAt: [], workingAt: [], wornBetween: [{ from: 0, to: 5 }] })).toEqual({
    ok: false,
    reason: 'not-identified',
  });
});
