import { describe, expect, it } from 'vitest';
import { posteriorDraws } from '@/lib/ensemble/posterior-draws';
import { simulateShop } from '@/tests/support/simulated-shop';
import { fitted } from '@/tests/support/small-shop';

const SHOPS = 300;
const BINS = 10;
/** The 99.9 % point of chi-square with 9 degrees of freedom. Source: published, from memory. Any table of chi-square. */
const CHI2_LIMIT = 27.88;

/** How often the truth fell into each tenth of the draws of its posterior. */
function ranks(tools: number): Record<'logShape' | 'logMedian' | 'sizeExponent', number[]> {
  const names = ['logShape', 'logMedian', 'sizeExponent'] as const;
  const counts = { logShape: empty(), logMedian: empty(), sizeExponent: empty() };
  for (let s = 0; s < SHOPS; s++) {
    const shop = simulateShop(`ranks:${tools}:${s}`, tools);
    const fit = fitted(shop.histories);
    const draws = posteriorDraws(fit, 512);
    for (const name of names) {
      const column = draws[fit.layout.indexOf[name] ?? 0] ?? new Float64Array(0);
      const below = column.filter((value) => value < shop.truth[name]).length / column.length;
      const bin = Math.min(BINS - 1, Math.floor(below * BINS));
      counts[name][bin] = (counts[name][bin] ?? 0) + 1;
    }
  }
  return counts;
}

function empty(): number[] {
  return new Array<number>(BINS).fill(0);
}

// source: formula. Simulation-based calibration (Talts and others 2018; Cook, Gelman and Rubin 2006): with truths drawn from
// the priors, the rank of the truth among exact posterior draws is uniform. Chi-square over ten bins, 300 shops: an exact
// posterior passes 999 times in 1,000. The mode with Laplace's spread fails it for the median of young shops.
describe.each([3, 12, 60])('shops with %d tools', (tools) => {
  const counts = ranks(tools);
  it.each(Object.keys(counts) as (keyof typeof counts)[])('rank the true %s evenly', (name) => {
    const even = SHOPS / BINS;
    const chi2 = counts[name].reduce((sum, count) => sum + (count - even) ** 2 / even, 0);
    expect(chi2).toBeLessThan(CHI2_LIMIT);
  });
});
