import { expect, it } from 'vitest';
import { exposureDraws, kindDrawsOf, logMedianDraws, wearFactorDraws } from '@/lib/ensemble/kind-draws';
import { cut } from '@/tests/support/edge-histories';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

const draws = kindDrawsOf(fitted(HISTORIES), 512);
const WET = { dry: false, rework: false };

function spread(values: Float64Array): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
}

// source: hand. The reference wears at factor 1 in every draw; an unknown material has no factor.
it('knows the reference as 1, and says so when it knows nothing', () => {
  expect(wearFactorDraws(draws, { materialId: 'ref', ...WET })?.every((value) => value === 1)).toBe(true);
  expect(wearFactorDraws(draws, { materialId: 'nobody-knows', ...WET })).toBeUndefined();
});

// source: identity. Factors multiply, draw by draw; exposure adds up.
it('multiplies factors and adds exposure in each draw', () => {
  const [hard, hardDry, dry] = [
    wearFactorDraws(draws, { materialId: '2507', ...WET }),
    wearFactorDraws(draws, { materialId: '2507', dry: true, rework: false }),
    wearFactorDraws(draws, { materialId: 'ref', dry: true, rework: false }),
  ];
  const exposure = exposureDraws(draws, [cut(100), cut(10, { materialId: '2507' }), cut(5, { dry: true })]);
  for (let k = 0; k < 512; k++) {
    expect(Math.abs((hardDry?.[k] ?? 0) / ((hard?.[k] ?? 0) * (dry?.[k] ?? 0)) - 1)).toBeLessThan(1e-12);
    expect(Math.abs((exposure[k] ?? 0) - (100 + 10 * (hard?.[k] ?? 0) + 5 * (dry?.[k] ?? 0)))).toBeLessThan(
      1e-9,
    );
  }
});

// source: formula. An unseen part adds its own spread of 0.3 to what is known of its size.
it('is less sure of a part that it has not seen', () => {
  const seen = spread(logMedianDraws(draws, { partId: 'die-38', odIn: 0.375, regrinds: 0 }));
  const unseen = spread(logMedianDraws(draws, { partId: 'never-seen', odIn: 0.375, regrinds: 0 }));
  expect(unseen).toBeGreaterThan(0.29);
  expect(unseen).toBeGreaterThan(1.5 * seen);
});
