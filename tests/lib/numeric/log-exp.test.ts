import { expect, it } from 'vitest';
import { logOneMinusExp, logOnePlusExp } from '@/lib/numeric/log-exp';
import { relativeMiss } from '@/tests/support/relative-miss';
import special from '../../fixtures/numeric/special.json';

// source: other-software. mpmath, 50 digits, tests/fixtures/numeric/generate.py.
it.each(special.logOneMinusExp)('logOneMinusExp($x)', ({ x, value }) => {
  expect(relativeMiss(logOneMinusExp(x), value)).toBeLessThan(1e-15);
});

it.each(special.logOnePlusExp)('logOnePlusExp($x)', ({ x, value }) => {
  expect(relativeMiss(logOnePlusExp(x), value)).toBeLessThan(1e-15);
});

// source: formula. Limits.
it('has its limits', () => {
  expect(logOneMinusExp(0)).toBe(Number.NEGATIVE_INFINITY);
  expect(Math.abs(logOneMinusExp(Number.POSITIVE_INFINITY))).toBe(0);
});
