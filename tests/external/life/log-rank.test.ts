import { expect, it } from 'vitest';
import { logRank } from '@/lib/compare/log-rank';

const SIX_MP = {
  time: [6, 6, 6, 6, 7, 9, 10, 10, 11, 13, 16, 17, 19, 20, 22, 23, 25, 32, 32, 34, 35],
  event: [1, 1, 1, 0, 1, 0, 1, 0, 0, 1, 1, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0],
};
const CONTROL = [1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23];

const TEST = logRank([
  { groupId: '6-MP', lives: SIX_MP.time.map((age, i) => ({ age, worn: SIX_MP.event[i] === 1 })) },
  { groupId: 'control', lives: CONTROL.map((age) => ({ age, worn: true })) },
]);

// source: published, from memory. Freireich and others 1963 as worked by Kleinbaum and Klein: log-rank 16.79, O 9 and 21,
// E 19.25 and 10.75. Half a unit of the printed digits.
it('Freireich: chi-square and expected counts', () => {
  expect(Math.abs(TEST.chi2 - 16.79)).toBeLessThan(0.005);
  expect(TEST.groups.map(({ worn }) => worn)).toEqual([9, 21]);
  expect(Math.abs((TEST.groups[0]?.expected ?? 0) - 19.25)).toBeLessThan(0.005);
  expect(Math.abs((TEST.groups[1]?.expected ?? 0) - 10.75)).toBeLessThan(0.005);
});

// source: published. The test suite of the lifelines package, checked there against R: p = 4.17e-05.
it('Freireich: probability by chance', () => {
  expect(Math.abs(TEST.p - 4.17e-5)).toBeLessThan(1e-7);
});

// source: formula. The shortcut Σ (O − E)²/E, a common mistake, gives 15.23 on these figures; this must not.
it('is not the shortcut', () => {
  const shortcut = TEST.groups.reduce(
    (sum, { worn, expected }) => sum + (worn - expected) ** 2 / expected,
    0,
  );
  expect(Math.abs(shortcut - 15.2328503)).toBeLessThan(1e-6);
  expect(Math.abs(TEST.chi2 - shortcut)).toBeGreaterThan(1);
});
