import { describe, expect, it } from 'vitest';
import { logPosterior } from '@/lib/life/log-posterior';
import type { EdgeHistory } from '@/lib/life/observation';
import { logPosteriorValues } from '@/lib/life/posterior-values';
import { cut, edge } from '@/tests/support/edge-histories';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

const MORE: readonly EdgeHistory[] = [
  ...HISTORIES,
  edge('Z-1', { before: [cut(300, { dry: true })], during: [cut(40, { materialId: '2507' })], end: 'worn' }),
  edge('Z-2', { before: [], during: [cut(900)], end: 'worn' }),
  edge('Z-3', { before: [cut(1100), cut(20, { rework: true })], end: 'worn' }),
  edge('Z-4', { before: [cut(1e7)], regrinds: 2 }),
  edge('Z-5', { before: [cut(700, { dry: true })], entered: [cut(400, { dry: true })] }),
  edge('Z-6', { before: [cut(700)], during: [cut(30)], end: 'worn', entered: [cut(300)] }),
];

// source: identity. The same posterior as the one with derivatives: differences between points agree.
describe.each(['weibull', 'log-logistic'] as const)('values at many points, %s', (law) => {
  const { model: own, theta } = fitted(MORE);
  const model = own && { ...own, law };
  if (model === undefined) throw new Error('a fit carries its model');
  const shifts = [0, 0.1, -0.2, 0.35, -0.5];
  const columns = Array.from(theta, (value, i) =>
    Float64Array.from(shifts, (shift) => value + shift * Math.cos(i)),
  );
  const values = logPosteriorValues(model, { count: shifts.length, columns });

  it.each([1, 2, 3, 4])('agrees with the posterior with derivatives, point %d', (k) => {
    const at = (index: number): number =>
      logPosterior(
        model,
        Float64Array.from(columns, (column) => column[index] as number),
      ).value;
    const expected = at(k) - at(0);
    expect(Math.abs((values[k] ?? 0) - (values[0] ?? 0) - expected)).toBeLessThan(
      1e-8 * (1 + Math.abs(expected)),
    );
  });
});

it('stays finite where a wear-out has no chance at all', () => {
  const { model, theta } = fitted(MORE);
  if (model === undefined) throw new Error('a fit carries its model');
  const columns = Array.from(theta, (value, i) => Float64Array.of(i === 1 ? value + 500 : value));
  expect(Number.isFinite(logPosteriorValues(model, { count: 1, columns })[0])).toBe(true);
});
