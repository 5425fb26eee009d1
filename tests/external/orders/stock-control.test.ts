import { expect, it } from 'vitest';
import { normalQuantile } from '@/lib/numeric/normal';
import { croston, tsb } from '@/lib/stock/intermittent-demand';
import { eoqWithSafetyStock } from '@/lib/stock/lot-and-reorder-point';
import { baseStock, newsvendor, newsvendorAt } from '@/lib/stock/newsvendor';
import { normalLoss, standardNormalLeftover, standardNormalLoss } from '@/lib/stock/normal-loss';
import { poissonStock } from '@/lib/stock/poisson-stock';
import { demandInLeadTime, reorderPoint, reorderPointAt, shortPerCycle } from '@/lib/stock/reorder-point';
import { relativeMiss } from '@/tests/support/relative-miss';

// source: published. Case F.rop.stevenson8: Stevenson, Operations Management, 14th ed., Example 8, p. 528 (z to two places).
it('F.rop.stevenson8: a risk of 3 in 100', () => {
  const exact = reorderPoint({ mean: 50, sd: 5 }, 0.97);
  expect(Math.abs(exact.z - 1.88)).toBeLessThan(0.005);
  const point = reorderPointAt({ mean: 50, sd: 5 }, 1.88);
  expect(Math.abs(point.safetyStock - 9.4)).toBeLessThan(0.005);
  expect(Math.abs(point.reorderPoint - 59.4)).toBeLessThan(0.005);
  expect(Math.abs(exact.reorderPoint - 59.4)).toBeLessThan(0.005);
});

// source: published. Case F.rop.heizer.both: Heizer and Render, Operations Management (from memory), z 1.65, both uncertain.
it('F.rop.heizer.both: demand and lead time both uncertain', () => {
  const demand = demandInLeadTime({ demandMean: 150, demandSd: 16, leadMean: 5, leadSd: 1 });
  expect(Math.abs(demand.sd - 154)).toBeLessThan(0.5);
  expect(Math.abs(reorderPointAt(demand, 1.65).reorderPoint - 1004)).toBeLessThan(0.5);
});

// source: published. Case F.rop.both.page: an unsigned page of worked questions; weak as a source, its arithmetic was checked.
it('F.rop.both.page: the same with a short lead time', () => {
  const demand = demandInLeadTime({ demandMean: 150, demandSd: 2, leadMean: 4, leadSd: 0.5 });
  expect(Math.abs(demand.sd - 75.10659)).toBeLessThan(5e-6);
  expect(Math.abs(reorderPointAt(demand, 1.65).reorderPoint - 724)).toBeLessThan(0.5);
});

const NEWS = { mean: 50, sd: 8, overage: 0.18, underage: 0.7 };

// source: published. Case F.newsvendor: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Example 4.3.
it('F.newsvendor: one chance to buy', () => {
  const best = newsvendor(NEWS);
  expect(relativeMiss(best.quantity, 56.60395592743389)).toBeLessThan(1e-10);
  expect(relativeMiss(best.cost, 1.9976051931766445)).toBeLessThan(1e-10);
  expect(relativeMiss(newsvendorAt(NEWS, 40).cost, 7.356131552870388)).toBeLessThan(1e-10);
  expect(relativeMiss(newsvendorAt(NEWS, 60).cost, 2.156131552870387)).toBeLessThan(1e-10);
});

// source: published. Case F.newsvendor.L4: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Example 4.4
// (four periods of lead time).
it('F.newsvendor.L4: topped up every period', () => {
  const best = baseStock(NEWS, 4);
  expect(relativeMiss(best.quantity, 264.7668943741548)).toBeLessThan(1e-10);
  expect(relativeMiss(best.cost, 4.466781004149578)).toBeLessThan(1e-10);
});

// source: published. Case F.newsvendor.others: an open library’s own example; then Porteus and Gallego (bought at 1, worth 4).
it('F.newsvendor.others: three more', () => {
  const first = newsvendor({ mean: 120, sd: 10, overage: 2, underage: 18 });
  expect(Math.abs(first.quantity - 132.815515655446)).toBeLessThan(0.005);
  expect(Math.abs(first.cost - 35.09966638649737)).toBeLessThan(0.005);
  for (const [sd, quantity, cost, profit, filled] of [
    [30, 120.23, 38.13, 261.87, 0.96],
    [20, 113.49, 25.42, 274.58, 0.97],
  ] as const) {
    const best = newsvendor({ mean: 100, sd, overage: 1, underage: 3 });
    expect(Math.abs(best.quantity - quantity)).toBeLessThan(0.005);
    expect(Math.abs(best.cost - cost)).toBeLessThan(0.005);
    expect(Math.abs(3 * 100 - best.cost - profit)).toBeLessThan(0.005);
    expect(Math.abs(best.fillRate - filled)).toBeLessThan(0.005);
  }
});

// source: published. Case F.rQ.eoqss: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Example 5.5.
it('F.rQ.eoqss: economic lot with safety stock', () => {
  const found = eoqWithSafetyStock({
    ...{ demandMean: 1300, demandSd: 150, leadTime: 0.08333333333333333 },
    ...{ orderCost: 8, holdingCost: 0.225, shortCost: 7.5 },
  });
  expect(relativeMiss(found.reorderPoint, 190.3369965715624)).toBeLessThan(1e-10);
  expect(relativeMiss(found.lot, 304.0467800264368)).toBeLessThan(1e-10);
});

// source: published. Case F.loss: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., as tested in the authors’
// open library of stock models (the z of the first row inferred: it reproduces both figures).
it.each([
  [-1.4, 1.436668142708465, 0.036668142708465],
  [0.3, 0.26676124211721, 0.56676124211721],
  [3.1, 0.0002672490952231408, 3.100267249095223],
])('F.loss: at %s', (z, short, leftover) => {
  expect(Math.abs(standardNormalLoss(z) - short)).toBeLessThan(1e-12);
  expect(Math.abs(standardNormalLeftover(z) - leftover)).toBeLessThan(1e-12);
});

// source: published. Case F.loss, normal with a mean: as above.
it('F.loss: with a mean and a spread', () => {
  expect(Math.abs(normalLoss(11, { mean: 8, sd: 3 }) - 0.249946411763059)).toBeLessThan(1e-12);
  expect(Math.abs(normalLoss(10.5, { mean: 15, sd: 5 }) - 5.002155685433356)).toBeLessThan(1e-12);
});

// source: published. Case F.fill.stevenson: Stevenson, Operations Management (from memory; its table has three places).
it('F.fill.stevenson: units short in a cycle', () => {
  expect(Math.abs(shortPerCycle(20, normalQuantile(0.9)) - 0.96)).toBeLessThan(0.02);
});

// source: other-software. Case F.poisson.rop: SciPy, scipy.stats.poisson ppf and cdf.
it.each([
  [0.8, 0.9, 2, 0.9525774039285098],
  [0.8, 0.95, 2, 0.9525774039285098],
  [0.8, 0.99, 3, 0.990920142199846],
  [1.5, 0.9, 3, 0.9343575456215499],
  [1.5, 0.95, 4, 0.9814240637778593],
  [1.5, 0.99, 5, 0.9955440192247521],
  [2.5, 0.9, 5, 0.9579789618046939],
  [2.5, 0.95, 5, 0.9579789618046939],
  [2.5, 0.99, 7, 0.9957533045106555],
  [4, 0.9, 7, 0.9488663842071527],
  [4, 0.95, 8, 0.9786365655120158],
  [4, 0.99, 9, 0.9918677572030661],
  [9, 0.9, 13, 0.9261492306920883],
  [9, 0.95, 14, 0.9585336745270963],
  [9, 0.99, 17, 0.9946804287488183],
])('F.poisson.rop: a mean of %s, as sure as %s', (mean, service, point, probability) => {
  const found = poissonStock(mean, service);
  expect(found.pieces).toBe(point);
  expect(Math.abs(found.probability - probability)).toBeLessThan(1e-12);
});

/** Product C of Hyndman and Athanasopoulos, Forecasting: Principles and Practice, 2nd ed. */
const PRODUCT_C = [
  0, 2, 0, 1, 0, 11, 0, 0, 0, 0, 2, 0, 6, 3, 0, 0, 0, 0, 0, 7, 0, 0, 0, 0, 0, 0, 0, 3, 1, 0, 0, 1, 0, 1, 0, 0,
];
const SMALL = [0, 0, 3, 0, 0, 0, 2, 0, 4, 0];

// source: other-software. Case F.croston: R package forecast 8.20, croston(), alpha 0.1; the corrected rates by their factors
// 1 − α/2 and 1 − α/(2 − α).
it('F.croston: a part wanted now and then', () => {
  const found = croston(PRODUCT_C, 0.1);
  const near = (value: number | undefined, expected: number) =>
    expect(relativeMiss(value ?? Number.NaN, expected)).toBeLessThan(1e-12);
  near(found?.size, 2.750253840100001);
  near(found?.interval, 2.7932800700000007);
  near(found?.rate, 0.9845965213577743);
  near(found?.rateSba, 0.9353666952898856);
  near(found?.rateSbj, 0.9327756518126282);
});

// source: hand. Case F.croston.small: worked by hand; R package forecast agrees.
it('F.croston.small: three demands', () => {
  const found = croston(SMALL, 0.2);
  const near = (value: number | undefined, expected: number) =>
    expect(relativeMiss(value ?? Number.NaN, expected)).toBeLessThan(1e-12);
  near(found?.size, 3.04);
  near(found?.interval, 2.96);
  near(found?.rate, 1.027027027027027);
  near(found?.rateSba, 0.9243243243243243);
});

// source: formula. Case F.tsb: the recursion of Teunter, Syntetos and Babai (2011) worked out apart; no published figures found.
it.each([
  [PRODUCT_C, 0.1, 0.05, 2, 0.5, [2.7502538401, 0.32940688214313263, 0.9059525425695186]],
  [SMALL, 0.2, 0.1, 3, 0.3333333333333333, [3.04, 0.3269558367, 0.993945743568]],
])('F.tsb: case %#', (demand, sizeSmoothing, chanceSmoothing, startSize, startChance, expected) => {
  const found = tsb(demand, { sizeSmoothing, chanceSmoothing, startSize, startChance });
  [found.size, found.chance, found.rate].forEach((value, i) => {
    expect(relativeMiss(value, expected[i] ?? Number.NaN)).toBeLessThan(1e-12);
  });
});
