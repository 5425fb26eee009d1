import fc from 'fast-check';
import { expect, it } from 'vitest';
import { poissonCdf } from '@/lib/stock/poisson-stock';
import { weibullRenewal, weibullSpares } from '@/lib/stock/weibull-spares';

const SHAPE_2 = [
  [0.5, 0, [0.778800783071405, 0.990567042673571, 0.999839739196686, 0.999998549615831, 0.999999991863161]],
  [1, 0, [0.367879441171442, 0.886841868052008, 0.991899351287108, 0.999695209977157, 0.999992962964422]],
  [2, 0, [0.0183156388887342, 0.342115593119894, 0.786035536674485, 0.963489399147505, 0.996269074827323]],
  [
    1,
    0.5,
    [0.1353352832366127, 0.7411425645643771, 0.973290025402776, 0.9986838473142279, 0.9999624355504003],
  ],
  [
    2,
    0.5,
    [0.0024787521766663585, 0.17425802309158556, 0.6371518322504522, 0.9196945282912653, 0.9898558377823394],
  ],
] as const;

// source: other-software. Series of McShane, Adrian, Bradlow and Fader (2008) in 120 digits;
// checked there against Gauss–Legendre convolution.
it.each(SHAPE_2)('shape 2, exposure %f scales, first edge at %f', (exposure, firstAge, expected) => {
  const enough = weibullSpares({ shape: 2, exposure, firstAge, sparesMost: 4 });
  for (const [k, value] of expected.entries()) expect(Math.abs((enough[k] ?? 0) - value)).toBeLessThan(1e-9);
});

// source: other-software. The same series, shape 1.5.
it('shape 1.5, where the density has a corner at 0', () => {
  const expected = [
    0.0591057465619562, 0.365777657545406, 0.726906138274505, 0.92156040963408, 0.983950571891129,
  ];
  const enough = weibullSpares({ shape: 1.5, exposure: 2, sparesMost: 4 });
  for (const [k, value] of expected.entries()) expect(Math.abs((enough[k] ?? 0) - value)).toBeLessThan(1e-9);
});

// source: identity. Shape 1 has no age: it is Poisson, whatever the first edge has behind it.
it('is Poisson for shape 1', () => {
  for (const exposure of [0.3, 2, 7]) {
    const enough = weibullSpares({ shape: 1, exposure, firstAge: 3, sparesMost: 8 });
    for (const [k, value] of enough.entries())
      expect(Math.abs(value - poissonCdf(exposure, k))).toBeLessThan(1e-10);
    expect(Math.abs(weibullRenewal({ shape: 1, exposure }) - exposure)).toBeLessThan(1e-9);
  }
});

// source: other-software. Renewal function by the same series.
it.each([
  [2, 1, 0.753691277537],
  [2, 2, 1.894039346787],
  [2, 3, 3.021745008954],
  [1.5, 2, 1.945500799926],
])('renewal function, shape %f over %f scales', (shape, exposure, expected) => {
  expect(Math.abs(weibullRenewal({ shape, exposure }) - expected)).toBeLessThan(1e-9);
});

// source: formula. A first edge that has cut nothing is a new one; no spare: plain survival exp(a^β − (a + x)^β).
it('more spares and less exposure are surer; none is plain survival', () => {
  const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(figure(0.5, 6), figure(0.05, 2.5), figure(0, 1.5), (shape, exposure, firstAge) => {
      const enough = weibullSpares({ shape, exposure, firstAge, sparesMost: 4 });
      expect(enough[0]).toBeCloseTo(Math.exp(firstAge ** shape - (firstAge + exposure) ** shape), 9);
      for (let k = 1; k < 5; k++) expect(enough[k] ?? 0).toBeGreaterThanOrEqual((enough[k - 1] ?? 1) - 1e-9);
      const less = weibullSpares({ shape, exposure: exposure / 2, firstAge, sparesMost: 4 });
      for (const [k, value] of less.entries()) expect(value).toBeGreaterThanOrEqual((enough[k] ?? 1) - 1e-9);
    }),
    { numRuns: 25 },
  );
  expect(weibullSpares({ shape: 2, exposure: 0, sparesMost: 1 })).toEqual([1, 1]);
  expect(weibullRenewal({ shape: 10, exposure: 2 })).toBeGreaterThan(1.4);
});
