import { expect, it } from 'vitest';
import { baseStock, newsvendor, newsvendorAt } from '@/lib/stock/newsvendor';
import { relativeMiss } from '@/tests/support/relative-miss';

const CHANCE = { mean: 50, sd: 8, overage: 0.18, underage: 0.7 };

// source: published. Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Example 4.3 and 4.4.
it('agrees with the worked examples', () => {
  const best = newsvendor(CHANCE);
  expect(relativeMiss(best.quantity, 56.60395592743389)).toBeLessThan(1e-10);
  expect(relativeMiss(best.cost, 1.9976051931766445)).toBeLessThan(1e-10);
  expect(relativeMiss(newsvendorAt(CHANCE, 40).cost, 7.356131552870388)).toBeLessThan(1e-10);
  expect(relativeMiss(newsvendorAt(CHANCE, 60).cost, 2.156131552870387)).toBeLessThan(1e-10);
  const four = baseStock(CHANCE, 4);
  expect(relativeMiss(four.quantity, 264.7668943741548)).toBeLessThan(1e-10);
  expect(relativeMiss(four.cost, 4.466781004149578)).toBeLessThan(1e-10);
});

// source: published. Examples of Porteus and of Gallego as printed in the manual of an R package for supply chains: bought
// at 1, worth 4. Two decimals.
it.each([
  [30, 120.23, 38.13, 0.96],
  [20, 113.49, 25.42, 0.97],
])('mean 100, sd %f', (sd, quantity, cost, fillRate) => {
  const best = newsvendor({ mean: 100, sd, overage: 1, underage: 3 });
  expect(Math.abs(best.quantity - quantity)).toBeLessThan(0.005);
  expect(Math.abs(best.cost - cost)).toBeLessThan(0.005);
  expect(Math.abs(3 * 100 - best.cost - (300 - cost))).toBeLessThan(0.005);
  expect(Math.abs(best.fillRate - fillRate)).toBeLessThan(0.005);
});

// source: identity. No other quantity costs less; leftover − short = quantity − mean.
it('is the best there is', () => {
  const best = newsvendor(CHANCE);
  for (const step of [-5, -0.1, 0.1, 5])
    expect(newsvendorAt(CHANCE, best.quantity + step).cost).toBeGreaterThan(best.cost);
  expect(best.expectedLeftover - best.expectedShort).toBeCloseTo(best.quantity - 50, 12);
});
