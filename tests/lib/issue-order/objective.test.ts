import { expect, it } from 'vitest';
import {
  compareMeasures,
  endsAtRisk,
  planFault,
  playPlan,
  unservedWeights,
} from '@/lib/issue-order/objective';
import { sure, task } from '../../support/edge-tasks';

const later = { startOnDay: '2026-11-28', dueOnDay: '2026-11-28' };

// source: hand. A: 15 units do line 1 (10 ends) and 5 of the 10 ends of line 2, which are 5.00 ends at risk; line 3 goes without:
// 3² + 3 − 1 − 2 = 9. Only A is opened.
it('measures a plan', () => {
  const tasks = [task('1'), task('2', later), task('3', later)];
  const played = playPlan(
    tasks,
    [sure('A', 15)],
    new Map([
      ['1', 'A'],
      ['2', 'A'],
    ]),
  );
  expect(played.measure).toEqual({ unserved: 9, endsAtRisk: 500, lifeOpened: 15 });
  expect(played.before.get('2')?.[0]).toBe(5);
});

// source: hand. Sure enough counts as no risk at all; one end expected to be missed out of ten is 1.00.
it('counts ends at risk in hundredths', () => {
  expect(endsAtRisk(task('1'), { probability: 0.9, madeEnds: 9.4 })).toBe(0);
  expect(endsAtRisk(task('1'), { probability: 0.89, madeEnds: 9 })).toBe(100);
  expect(endsAtRisk(task('1'), { probability: 0.899, madeEnds: 10 })).toBe(1);
});

// source: hand. Serving comes before risk, risk before life; two lines without a tool always weigh more than one.
it('orders measures', () => {
  const of = (unserved: number, atRisk: number, lifeOpened: number) => ({
    unserved,
    endsAtRisk: atRisk,
    lifeOpened,
  });
  expect(compareMeasures(of(1, 0, 0), of(0, 999, 999))).toBeGreaterThan(0);
  expect(compareMeasures(of(0, 1, 0), of(0, 0, 999))).toBeGreaterThan(0);
  expect(compareMeasures(of(0, 1, 5), of(0, 1, 4))).toBeGreaterThan(0);
});

// source: hand. The last k + 1 lines of a week without a tool weigh more than its first k, for every k.
it.each([1, 2, 8, 14, 60])('never trades two lines for one, in a week of %d', (n) => {
  const tasks = Array.from({ length: n }, (_, i) => task(`L${i}`));
  const weights = [...unservedWeights(tasks).values()];
  const sum = (values: number[]) => values.reduce((total, value) => total + value, 0);
  for (let k = 0; k < n; k++) expect(sum(weights.slice(n - k - 1))).toBeGreaterThan(sum(weights.slice(0, k)));
});

// source: hand. One tool to two lines at a time, and a tool that does not fit, are named.
it('names what is wrong with a plan', () => {
  expect(
    planFault(
      [task('1'), task('2')],
      new Map([
        ['1', 'A'],
        ['2', 'A'],
      ]),
    ),
  ).toMatch(/at a time/);
  expect(planFault([task('1', { toolIds: ['B'] })], new Map([['1', 'A']]))).toMatch(/does not serve/);
  expect(
    planFault(
      [task('1'), task('2', later)],
      new Map([
        ['1', 'A'],
        ['2', 'A'],
      ]),
    ),
  ).toBeNull();
});
