import { describe, expect, it } from 'vitest';
import { groupEffect } from '@/lib/compare/group-effect';
import type { GroupedEdge } from '@/lib/compare/grouped-edge';
import { type KindDraws, kindDrawsOf } from '@/lib/ensemble/kind-draws';
import type { EdgeHistory } from '@/lib/life/observation';
import { streamOfKey } from '@/lib/numeric/random-stream';
import { cut, edge } from '@/tests/support/edge-histories';
import { fitted } from '@/tests/support/small-shop';

/** Forty dies of shape 2.5, and a lot of so many whose lives are `stretch` times as long. */
function dies(key: string, count: number, stretch: number): EdgeHistory[] {
  const random = streamOfKey(key);
  return Array.from({ length: count }, (_, i) => {
    const life = stretch * 1200 * (-Math.log(random()) / Math.LN2) ** (1 / 2.5);
    const row = Math.floor(life / 80) * 80;
    return edge(`${key}${i}`, { before: [cut(row)], during: [cut(80)], end: 'worn' });
  });
}

const REST: KindDraws = kindDrawsOf(fitted(dies('R', 40, 1)), 512);
const asGroup = (histories: readonly EdgeHistory[]): GroupedEdge[] =>
  histories.map((history) => ({ history, ends: 100 }));

describe('the effect of a lot', () => {
  it('that lasts half as long is found, drawn in by caution', () => {
    const { lifeFactor, probabilityLower, worn, ends } = groupEffect(REST, {
      groupId: 'L2',
      edges: asGroup(dies('half', 12, 0.5)),
    });
    expect(probabilityLower).toBeGreaterThan(0.99);
    expect(lifeFactor.median).toBeGreaterThan(0.4);
    expect(lifeFactor.median).toBeLessThan(0.75);
    expect({ worn, ends }).toEqual({ worn: 12, ends: 1200 });
  });

  it('that lasts as long as the rest is not', () => {
    const { lifeFactor, probabilityLower } = groupEffect(REST, {
      groupId: 'L1',
      edges: asGroup(dies('same', 12, 1)),
    });
    expect(lifeFactor.low).toBeLessThan(1);
    expect(lifeFactor.high).toBeGreaterThan(1);
    expect(probabilityLower).toBeLessThan(0.95);
    expect(probabilityLower).toBeGreaterThan(0.05);
  });

  // source: identity. Without evidence the belief stands: no effect, as likely either way, band e^(∓1.2816·0.3).
  it('of edges that have hardly cut is the belief itself', () => {
    const { lifeFactor, probabilityLower } = groupEffect(REST, {
      groupId: 'new',
      edges: asGroup([edge('N', { before: [cut(0.001)] })]),
    });
    expect(probabilityLower).toBeCloseTo(0.5, 6);
    expect(lifeFactor.median).toBeCloseTo(1, 6);
    expect(Math.abs(Math.log(lifeFactor.high) - 1.2815515655 * 0.3)).toBeLessThan(0.005);
    expect(Math.abs(Math.log(lifeFactor.low) + 1.2815515655 * 0.3)).toBeLessThan(0.005);
  });
});

// source: formula. One future (all draws alike): p(δ | log) ∝ N(δ; 0, 0.3)·Π L summed here in steps of 0.0005.
it('equals the sum over the effect where the rest leaves nothing open', () => {
  const one = { ...REST, figures: REST.figures.map((column) => new Float64Array(512).fill(column[3] ?? 0)) };
  const shape = Math.exp(one.figures[0]?.[0] ?? 0);
  const fixed: KindDraws = { ...one, shape: new Float64Array(512).fill(shape), factors: new Map() };
  const group = dies('lot', 6, 0.7);
  const names = fixed.fit.layout.indexOf;
  const figure = (name: string): number => fixed.figures[names[name] ?? 0]?.[0] ?? 0;
  const median = Math.exp(figure('logMedian') + figure('part:die-38'));
  let [below, all] = [0, 0];
  for (let effect = -1.5; effect < 1.5; effect += 0.0005) {
    const hazard = (x: number): number => Math.LN2 * (x / (median * Math.exp(effect))) ** shape;
    let log = -0.5 * (effect / 0.3) ** 2;
    for (const { before } of group) {
      const x = before[0]?.base ?? 0;
      log += Math.log(Math.exp(-hazard(x)) - Math.exp(-hazard(x + 80)));
    }
    all += Math.exp(log);
    if (effect < 0) below += Math.exp(log);
  }
  const { probabilityLower } = groupEffect(fixed, { groupId: 'lot', edges: asGroup(group) });
  expect(Math.abs(probabilityLower - below / all)).toBeLessThan(0.005);
});
