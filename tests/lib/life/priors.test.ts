import { expect, it } from 'vitest';
import { defaultLifePriors, materialPrior, normal } from '@/lib/life/priors';

// source: hand. Middle of 60 to 220 ends at 10.5 turns: √(60·220)·10.5 = 1206; of 35 to 120 cones of 59 mm³: 3824.
it('starts from the middle of the common ranges', () => {
  for (const [kind, low, high, perEnd] of [
    ['die', 60, 220, 10.5],
    ['blade', 35, 120, 59],
  ] as const) {
    const { logMedian } = defaultLifePriors(kind, { referenceMaterialId: 'ref', materials: [] });
    if (logMedian.form !== 'normal') throw new Error('expected a normal prior');
    expect(Math.abs(logMedian.mean - Math.log(Math.sqrt(low * high) * perEnd))).toBeLessThan(0.001);
    // Wide: a shop's own typical life a factor of 2 away must not surprise (within 1.1 spreads).
    expect(Math.LN2 / logMedian.sd).toBeLessThan(1.1);
  }
});

it('leaves the reference material out, whatever factor it is listed with', () => {
  const materials = [
    { materialId: 'ref', factor: 1 },
    { materialId: '2507', factor: 2.5 },
  ];
  const priors = defaultLifePriors('die', { referenceMaterialId: 'ref', materials });
  expect(priors.materials.map(({ materialId }) => materialId)).toEqual(['2507']);
});

it('takes a spread of zero as fixed, and refuses nonsense', () => {
  expect(normal(2, 0)).toEqual({ form: 'fixed', value: 2 });
  expect(() => normal(Number.NaN, 1)).toThrow('invariant');
  expect(() => materialPrior(0)).toThrow('invariant');
});
