import { expect, it } from 'vitest';
import { findRoot } from '@/lib/numeric/root';

const CASES = [
  // source: hand. √2; source: published. W. W. Wallis's cubic x³ − 2x − 5 (1685), root 2.0945514815423265.
  { name: 'square root', f: (x: number) => x * x - 2, low: 0, high: 2, root: Math.SQRT2 },
  { name: "Wallis's cubic", f: (x: number) => x ** 3 - 2 * x - 5, low: 2, high: 3, root: 2.0945514815423265 },
  // source: hand. e^x = 1e-6 at x = −6·ln 10.
  { name: 'flat far side', f: (x: number) => Math.exp(x) - 1e-6, low: -500, high: 500, root: -6 * Math.LN10 },
  { name: 'a step', f: (x: number) => (x < 0.3 ? -1 : 1), low: 0, high: 1, root: 0.3 },
];

it.each(CASES)('finds $name', ({ f, low, high, root }) => {
  const found = findRoot(f, { low, high });
  if (!found.ok) throw new Error(found.reason);
  expect(Math.abs(found.root - root)).toBeLessThan(1e-14 * Math.max(1, Math.abs(root)) * 4);
  expect(found.iterations).toBeLessThan(120);
});

it('takes a root at an end, refuses a range without a change of sign, and stops at the cap', () => {
  expect(findRoot((x) => x, { low: 0, high: 5 })).toEqual({
    ok: true,
    root: 0,
    iterations: 0,
    stoppedBy: 'exact',
  });
  expect(findRoot((x) => x * x + 1, { low: -1, high: 1 })).toEqual({
    ok: false,
    reason: 'no-bracket',
    iterations: 0,
  });
  expect(findRoot((x) => x ** 3 - 2, { low: 0, high: 2, maxIterations: 2 })).toMatchObject({
    ok: false,
    reason: 'cap',
  });
});
