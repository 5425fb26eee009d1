import { expect, it } from 'vitest';
import { groupedDraws, groupedLogLik } from '@/lib/compare/grouped-edge';
import { kindDrawsOf } from '@/lib/ensemble/kind-draws';
import { cut, edge } from '@/tests/support/edge-histories';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

const DRAWS = kindDrawsOf(fitted(HISTORIES), 64);
/** A draw in which lives are Weibull. */
const K = DRAWS.logLogistic?.indexOf(0) ?? 0;
const SHAPE = DRAWS.shape[K] ?? 1;

function hazardAt(x: number, logMedian: number): number {
  return Math.LN2 * (x / Math.exp(logMedian)) ** SHAPE;
}

// source: formula. Survival, interval and density of a Weibull life written out, the group's cutting divided by the stretch.
it('counts what was cut within the group by the stretch of its life', () => {
  const whole = groupedDraws(DRAWS, { history: edge('E', { before: [cut(600)] }), ends: 57 });
  const m = whole.logMedian[K] ?? 0;
  expect(groupedLogLik(whole, K, SHAPE, 1.5)).toBeCloseTo(-hazardAt(400, m), 12);
  const heat = groupedDraws(DRAWS, {
    history: edge('E', { before: [cut(600)] }),
    within: { before: [cut(300)], during: [] },
    ends: 28,
  });
  expect(groupedLogLik(heat, K, SHAPE, 1.5)).toBeCloseTo(-hazardAt(500, m), 12);
  const row = groupedDraws(DRAWS, {
    history: edge('E', { before: [cut(600)], during: [cut(60)], end: 'worn' }),
    ends: 60,
  });
  const chance = Math.exp(-hazardAt(600, m)) - Math.exp(-hazardAt(660, m));
  expect(groupedLogLik(row, K, SHAPE, 1)).toBeCloseTo(Math.log(chance), 9);
  const exact = groupedDraws(DRAWS, { history: edge('E', { before: [cut(600)], end: 'worn' }), ends: 60 });
  expect(groupedLogLik(exact, K, SHAPE, 1)).toBeCloseTo(
    Math.log(SHAPE * hazardAt(600, m)) - hazardAt(600, m),
    12,
  );
});

it('says nothing of an edge that cut nothing', () => {
  const idle = groupedDraws(DRAWS, { history: edge('E', { before: [] }), ends: 0 });
  expect(groupedLogLik(idle, K, SHAPE, 2)).toBeCloseTo(0, 12);
});

// source: formula. Log-logistic: S = 1/(1 + u), density by log exposure b·u/(1 + u)², u = (x/m)^b, b = √2·shape; divided by the
// survival at entry where the edge was followed late.
it('reads the same edge by the other law, and given that it lasted until it was followed', () => {
  const tailed = { ...DRAWS, logLogistic: new Uint8Array(64).fill(1) };
  const history = edge('E', { before: [cut(600)], during: [cut(60)], end: 'worn' });
  const whole = groupedDraws(tailed, { history, ends: 60 });
  const m = whole.logMedian[K] ?? 0;
  const u = (x: number): number => (x / Math.exp(m)) ** (Math.SQRT2 * SHAPE);
  const lasts = (x: number): number => 1 / (1 + u(x));
  const chance = Math.log(lasts(400) - lasts(440));
  expect(groupedLogLik(whole, K, SHAPE, 1.5)).toBeCloseTo(chance, 9);
  const late = groupedDraws(tailed, { history: { ...history, entered: [cut(300)] }, ends: 60 });
  expect(groupedLogLik(late, K, SHAPE, 1.5)).toBeCloseTo(chance - Math.log(lasts(200)), 9);
  const exact = groupedDraws(tailed, { history: edge('E', { before: [cut(600)], end: 'worn' }), ends: 60 });
  const density = (Math.SQRT2 * SHAPE * u(600)) / (1 + u(600)) ** 2;
  expect(groupedLogLik(exact, K, SHAPE, 1)).toBeCloseTo(Math.log(density), 9);
});
