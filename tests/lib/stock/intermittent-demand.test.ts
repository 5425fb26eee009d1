import { expect, it } from 'vitest';
import { croston, tsb } from '@/lib/stock/intermittent-demand';
import { relativeMiss } from '@/tests/support/relative-miss';

/** Product C of Hyndman and Athanasopoulos, Forecasting: Principles and Practice, 2nd ed. */
const PRODUCT_C = [
  ...[0, 2, 0, 1, 0, 11, 0, 0, 0, 0, 2, 0, 6, 3, 0, 0, 0, 0],
  ...[0, 7, 0, 0, 0, 0, 0, 0, 0, 3, 1, 0, 0, 1, 0, 1, 0, 0],
];
const SMALL = [0, 0, 3, 0, 0, 0, 2, 0, 4, 0];
const near = (value: number | undefined, expected: number) =>
  expect(relativeMiss(value ?? Number.NaN, expected)).toBeLessThan(1e-12);

// source: other-software. R package forecast, croston(alpha = 0.1); SBA and SBJ factors from the package’s manual.
it('Croston on product C', () => {
  const found = croston(PRODUCT_C, 0.1);
  near(found?.size, 2.750253840100001);
  near(found?.interval, 2.7932800700000007);
  near(found?.rate, 0.9845965213577743);
  near(found?.rateSba, 0.9353666952898856);
  near(found?.rateSbj, 0.9327756518126282);
});

// source: hand. Sizes 3, 2, 4 and gaps 3, 4, 2 at smoothing 0.2: 3.04 and 2.96. R package forecast agrees.
it('Croston on a small series', () => {
  const found = croston(SMALL, 0.2);
  near(found?.size, 3.04);
  near(found?.interval, 2.96);
  near(found?.rate, 1.027027027027027);
  near(found?.rateSba, 0.9243243243243243);
});

// source: formula. The published update written out apart in Python: chance every period, size only on demand. No published
// worked example was found.
it('Teunter, Syntetos and Babai', () => {
  const c = tsb(PRODUCT_C, { sizeSmoothing: 0.1, chanceSmoothing: 0.05, startSize: 2, startChance: 0.5 });
  near(c.size, 2.7502538401);
  near(c.chance, 0.32940688214313263);
  near(c.rate, 0.9059525425695186);
  const small = tsb(SMALL, { sizeSmoothing: 0.2, chanceSmoothing: 0.1, startSize: 3, startChance: 1 / 3 });
  near(small.size, 3.04);
  near(small.chance, 0.3269558367);
  near(small.rate, 0.993945743568);
});

// source: identity. The same demand every period is forecast as itself; no demand at all is no forecast.
it('is the demand itself where it never changes', () => {
  expect(croston([4, 4, 4, 4], 0.3)).toMatchObject({ size: 4, interval: 1, rate: 4 });
  expect(croston([0, 0, 0], 0.3)).toBeUndefined();
  const none = tsb([0, 0, 0, 0], {
    sizeSmoothing: 0.1,
    chanceSmoothing: 0.5,
    startSize: 2,
    startChance: 0.8,
  });
  expect(none.rate).toBeCloseTo(2 * 0.8 * 0.5 ** 4, 14);
});
