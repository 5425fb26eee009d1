import { expect, it } from 'vitest';
import { conformityProbability, specificRisk } from '@/lib/gauge/conformity';
import { globalRisks } from '@/lib/gauge/global-risk';
import { reliabilityInterval } from '@/lib/gauge/reliability-interval';

// source: published, from memory. JCGM 106:2012 clause 7.4, viscosity 13.6 mm²/s in 12.5 to 16.3, u 1.8: 0.66 (2 digits printed).
it('two limits: the viscosity example', () => {
  const p = conformityProbability({ value: 13.6, standardUncertainty: 1.8 }, { lower: 12.5, upper: 16.3 });
  expect(Math.abs(p - 0.66)).toBeLessThan(0.005);
});

// source: published, from memory. JCGM 106:2012 clause 7.3, burst strength 507 kPa over 490, u 8.6: 0.98 (2 digits printed).
it('one limit: the burst strength example', () => {
  const p = conformityProbability({ value: 507, standardUncertainty: 8.6 }, { lower: 490 });
  expect(Math.abs(p - 0.98)).toBeLessThan(0.005);
});

// source: other-software. SciPy norm.sf(k); ILAC-G8:2019 calls the k = 2 case "below 2.5 %".
it.each([
  [0, 0.5],
  [1, 0.15865525393145707],
  [1.64, 0.05050258347410371],
  [1.645, 0.049984905539121376],
  [1.65, 0.0494714680336481],
  [2, 0.022750131948179195],
  [3, 0.0013498980316300933],
])('a guard band of %s u leaves a risk of %s at the limit', (k, risk) => {
  expect(Math.abs(specificRisk(k) - risk)).toBeLessThan(1e-14);
});

// source: other-software. The weighing example of JCGM 106 9.5 (1500 ± 0.2, u₀ 0.12, u_m 0.04), bivariate normal in SciPy.
it.each([
  [0, 0.018942206716918538, 0.03720780017795358],
  [-0.04, 0.04489816527631077, 0.007097031854486171],
  [-0.02, 0.03114455227310424, 0.017554168727980112],
  [0.02, 0.009878291521712575, 0.0690265104613329],
  [0.04, 0.004334072221793033, 0.1146565784079581],
  [0.0656, 0.0011452879831140524, 0.19356186493416253],
  [0.08, 0.0004686335988678814, 0.2476696402005545],
])('guard band %s: consumer %s, producer %s', (guardBand, consumer, producer) => {
  const risks = globalRisks({
    population: { mean: 1500, sd: 0.12 },
    ...{ standardUncertainty: 0.04, limits: { lower: 1499.8, upper: 1500.2 }, guardBand },
  });
  expect(Math.abs(risks.consumerRisk - consumer)).toBeLessThan(1e-11);
  expect(Math.abs(risks.producerRisk - producer)).toBeLessThan(1e-11);
  expect(Math.abs(risks.conformingShare - 0.9044192954544461)).toBeLessThan(1e-13);
});

// source: formula. I·ln R_target/ln R_observed (NCSLI RP-1 and NASA handbook, from memory), evaluated in Python.
it.each([
  [12, 0.9, 0.95, 5.842032271838881],
  [12, 0.85, 0.95, 3.787371320699193],
  [12, 0.98, 0.95, 30.467180609840256],
  [6, 0.8, 0.9, 2.832988406896891],
  [52, 0.95, 0.9, 106.81214532277569],
])('an interval of %s with %s observed and %s wanted becomes %s', (interval, observed, target, expected) => {
  const next = reliabilityInterval({ interval, observed, target });
  expect(Math.abs(next / expected - 1)).toBeLessThan(1e-13);
});
