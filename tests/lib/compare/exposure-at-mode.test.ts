import { expect, it } from 'vitest';
import { exposureAtMode } from '@/lib/compare/exposure-at-mode';
import { cut } from '@/tests/support/edge-histories';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

// source: hand. 100 turns of the reference and 40 of 2507 at its most probable factor.
it('counts every cut by its most probable factor', () => {
  const fit = fitted(HISTORIES);
  const hard = Math.exp(fit.mode['material:2507'] ?? 0);
  const parts = [cut(60), cut(40, { materialId: '2507' }), cut(40)];
  expect(exposureAtMode(fit, parts)).toBeCloseTo(100 + 40 * hard, 9);
  expect(exposureAtMode(fit, [cut(7, { materialId: 'nobody knows' })])).toBe(7);
  expect(exposureAtMode(fit, [])).toBe(0);
});
