import { expect, it } from 'vitest';
import { poissonCdf, poissonStock } from '@/lib/stock/poisson-stock';
import { weibullRenewal, weibullSpares } from '@/lib/stock/weibull-spares';

/** Chance that 0, 1, 2 … spares suffice, by the mean used. */
// source: other-software. Case E.poisson: SciPy, scipy.stats.poisson.cdf, to 1e-12.
const SUFFICE: readonly (readonly [mean: number, enough: readonly number[]])[] = [
  [
    0.5,
    [
      0.6065306597126334, 0.9097959895689501, 0.9856123220330293, 0.9982483774437092, 0.9998278843700441,
      0.9999858350626777, 0.9999989976203971, 0.9999999378030914,
    ],
  ],
  [
    1,
    [
      0.36787944117144245, 0.7357588823428847, 0.9196986029286058, 0.9810118431238462, 0.9963401531726563,
      0.9994058151824183, 0.999916758850712, 0.9999897508033253,
    ],
  ],
  [
    1.5,
    [
      0.22313016014842982, 0.5578254003710748, 0.8088468305380582, 0.9343575456215499, 0.9814240637778593,
      0.9955440192247521, 0.9990740080864754, 0.9998304342711303,
    ],
  ],
  [
    2,
    [
      0.1353352832366127, 0.40600584970983794, 0.6766764161830634, 0.857123460498547, 0.9473469826562889,
      0.9834363915193856, 0.9954661944737512, 0.9989032810321413,
    ],
  ],
  [
    3,
    [
      0.04978706836786395, 0.1991482734714558, 0.42319008112684364, 0.6472318887822313, 0.8152632445237722,
      0.9160820579686966, 0.9664914646911588, 0.9880954961436426,
    ],
  ],
];
it.each(SUFFICE)('E.poisson: with a mean of %s', (mean, enough) => {
  enough.forEach((probability, spares) => {
    expect(Math.abs(poissonCdf(mean, spares) - probability)).toBeLessThan(1e-12);
  });
});

// source: other-software. Case E.poisson.min: SciPy, scipy.stats.poisson.ppf.
it.each([
  [0.5, 0.9, 1],
  [0.5, 0.95, 2],
  [0.5, 0.99, 3],
  [1, 0.9, 2],
  [1, 0.95, 3],
  [1, 0.99, 4],
  [2, 0.9, 4],
  [2, 0.95, 5],
  [2, 0.99, 6],
  [3, 0.9, 5],
  [3, 0.95, 6],
  [3, 0.99, 8],
  [5, 0.9, 8],
  [5, 0.95, 9],
  [5, 0.99, 11],
] as const)('E.poisson.min: a mean of %s, as sure as %s, asks for %s', (mean, service, pieces) => {
  expect(poissonStock(mean, service).pieces).toBe(pieces);
});

/** Spares of Weibull life: shape, exposure and first age in scales, chance that 0, 1, 2 … suffice. */
// source: other-software. Cases E.weibull.* and E.weibull.residual.*: the count model series of McShane, Adrian, Bradlow and
// Fader (2008) summed in 120 digits; convolution by Gauss-Legendre and ten million simulated histories agree; to 1e-9.
const SPARES: readonly (readonly [
  name: string,
  shape: number,
  exposure: number,
  firstAge: number,
  enough: readonly number[],
])[] = [
  [
    'E.weibull.2,0.5',
    2,
    0.5,
    0,
    [0.778800783071405, 0.990567042673571, 0.999839739196686, 0.999998549615831, 0.999999991863161],
  ],
  [
    'E.weibull.2,1',
    2,
    1,
    0,
    [
      0.367879441171442, 0.886841868052008, 0.991899351287108, 0.999695209977157, 0.999992962964422,
      0.999999890254749,
    ],
  ],
  [
    'E.weibull.2,2',
    2,
    2,
    0,
    [
      0.0183156388887342, 0.342115593119894, 0.786035536674485, 0.963489399147505, 0.996269074827323,
      0.999747929439983, 0.999987924755822, 0.999999568568466,
    ],
  ],
  [
    'E.weibull.1.5,2',
    1.5,
    2,
    0,
    [
      0.0591057465619562, 0.365777657545406, 0.726906138274505, 0.92156040963408, 0.983950571891129,
      0.99752900597834, 0.999701454033467, 0.999970768759231,
    ],
  ],
  [
    'E.weibull.1,2',
    1,
    2,
    0,
    [
      0.135335283236613, 0.406005849709838, 0.676676416183063, 0.857123460498547, 0.947346982656289,
      0.983436391519386, 0.995466194473751, 0.998903281032141, 0.999762552671739,
    ],
  ],
  [
    'E.weibull.residual.0.5,1',
    2,
    1.0,
    0.5,
    [
      0.1353352832366127, 0.7411425645643771, 0.973290025402776, 0.9986838473142279, 0.9999624355504003,
      0.9999993025629721, 0.999999990910874, 0.9999999999122986,
    ],
  ],
  [
    'E.weibull.residual.0.5,2',
    2,
    2.0,
    0.5,
    [
      0.0024787521766663585, 0.17425802309158556, 0.6371518322504522, 0.9196945282912653, 0.9898558377823394,
      0.9991830678041188, 0.9999545776078425, 0.999998153391462,
    ],
  ],
];
it.each(SPARES)('%s', (_, shape, exposure, firstAge, enough) => {
  const found = weibullSpares({ shape, exposure, firstAge, sparesMost: enough.length - 1 });
  expect(found).toHaveLength(enough.length);
  enough.forEach((probability, spares) => {
    expect(Math.abs((found[spares] ?? Number.NaN) - probability)).toBeLessThan(1e-9);
  });
});

// source: other-software. Case E.renewal: the same series, M(t) = Σ P(N ≥ n), to 1e-9.
it.each([
  [2, 1, 0.753691277537],
  [2, 2, 1.894039346787],
  [2, 3, 3.021745008954],
  [1.5, 2, 1.945500799926],
] as const)('E.renewal: shape %s over %s scales uses up %s', (shape, exposure, used) => {
  expect(Math.abs(weibullRenewal({ shape, exposure }) - used)).toBeLessThan(1e-9);
});
