import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Pool, shareSupply } from '@/lib/capability/share-supply';

/** One draw: what each taker could get. */
function capacities(pools: { reach: number[]; supply: number }[], demands: number[]): number[] {
  const weights = Float64Array.of(1);
  const list: Pool[] = pools.map(({ reach, supply }) => ({ reach, supply: Float64Array.of(supply) }));
  const said: number[] = [];
  shareSupply(
    list,
    demands.map((amount) => ({ amount, weights, takes: true })),
    1,
    (_, capacity) => said.push(capacity[0] ?? -1),
  );
  return said;
}

// source: hand.
describe('shareSupply', () => {
  it('serves in order and tells each what is left for it', () => {
    expect(capacities([{ reach: [0, 1, 2], supply: 10 }], [4, 4, 4])).toEqual([10, 6, 2]);
  });

  it('takes first from the pool that the fewest can reach', () => {
    const pools = [
      { reach: [0, 1], supply: 5 },
      { reach: [0], supply: 5 },
    ];
    expect(capacities(pools, [5, 5])).toEqual([10, 5]);
  });

  it('moves an earlier taker when a later one would go short', () => {
    const pools = [
      { reach: [0, 1], supply: 5 },
      { reach: [0, 2], supply: 5 },
    ];
    expect(capacities(pools, [5, 5, 5])).toEqual([10, 5, 0]);
    expect(capacities([...pools].reverse(), [5, 5, 5])).toEqual([10, 5, 0]);
    expect(capacities(pools, [5, 0, 5])).toEqual([10, 0, 5]);
  });

  it('gives each draw its own future, weights included', () => {
    const pool = { reach: [0, 1], supply: Float64Array.of(10, 10, 0) };
    const said: number[][] = [];
    const demands = [
      { amount: 4, weights: Float64Array.of(1, 2, 1), takes: true },
      { amount: 0, weights: new Float64Array(), takes: true },
    ];
    shareSupply([pool], demands, 3, (_, capacity) => said.push([...capacity]));
    expect(said).toEqual([
      [10, 10, 0],
      [6, 2, 0],
    ]);
    expect([...pool.supply]).toEqual([10, 10, 0]);
  });
});

// source: formula. Smallest cut over every subset of takers; and complements (Shapley 1962).
it('what the takers get together is the smallest cut, and more supply gives none of them less', () => {
  const pool = fc.record({
    reach: fc.subarray([0, 1, 2, 3, 4], { minLength: 1 }),
    supply: fc.integer({ min: 0, max: 20 }),
  });
  const demands = fc.array(fc.integer({ min: 0, max: 15 }), { minLength: 5, maxLength: 5 });
  let crossed = 0;
  fc.assert(
    fc.property(fc.array(pool, { minLength: 1, maxLength: 6 }), demands, pool, (pools, wants, extra) => {
      const got = capacities(pools, wants).map((capacity, i) => Math.min(capacity, wants[i] ?? 0));
      wants.forEach((_, last) => {
        const sum = got.slice(0, last + 1).reduce((a, b) => a + b, 0);
        expect(sum).toBeCloseTo(smallestCut(pools, wants.slice(0, last + 1)), 4);
      });
      capacities([...pools, extra], wants).forEach((capacity, i) => {
        expect(Math.min(capacity, wants[i] ?? 0)).toBeGreaterThanOrEqual((got[i] ?? 0) - 1e-5);
      });
      if (got.some((amount, i) => amount < (wants[i] ?? 0))) crossed++;
    }),
    { numRuns: 2000, seed: 21 },
  );
  expect(crossed).toBeGreaterThan(500);
});

function smallestCut(pools: { reach: number[]; supply: number }[], wants: number[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let subset = 0; subset < 2 ** wants.length; subset++) {
    const inside = (i: number) => (subset >> i) % 2 === 1;
    const cutWants = wants.reduce((sum, want, i) => sum + (inside(i) ? 0 : want), 0);
    const cutPools = pools.reduce(
      (sum, { reach, supply }) => sum + (reach.some((i) => i < wants.length && inside(i)) ? supply : 0),
      0,
    );
    least = Math.min(least, cutWants + cutPools);
  }
  return least;
}

// source: formula. More edges of a transport problem never make its maximum flow smaller.
it('more takers in reach never give the first i takers less together', () => {
  const pool = fc.record({
    reach: fc.subarray([0, 1, 2, 3, 4]),
    supply: fc.integer({ min: 0, max: 20 }),
  });
  const demands = fc.array(fc.integer({ min: 0, max: 15 }), { minLength: 5, maxLength: 5 });
  let gained = 0;
  fc.assert(
    fc.property(
      fc.array(pool, { minLength: 1, maxLength: 6 }),
      demands,
      fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 6, maxLength: 6 }),
      (pools, wants, more) => {
        const wider = pools.map(({ reach, supply }, p) => ({
          supply,
          reach: [...new Set([...reach, more[p] ?? 0])].sort(),
        }));
        const got = (some: typeof pools) =>
          capacities(some, wants).map((capacity, i) => Math.min(capacity, wants[i] ?? 0));
        const [before, after] = [got(pools), got(wider)];
        let [sumBefore, sumAfter] = [0, 0];
        wants.forEach((_, i) => {
          sumBefore += before[i] ?? 0;
          sumAfter += after[i] ?? 0;
          expect(sumAfter).toBeGreaterThanOrEqual(sumBefore - 1e-9);
        });
        if (sumAfter > sumBefore) gained++;
      },
    ),
    { numRuns: 400, seed: 22 },
  );
  expect(gained).toBeGreaterThan(50);
});

// source: hand. Supply in draws 0 and 2 only, told by its list of draws.
it('a pool that holds something in some draws only says so by a list', () => {
  const said: number[][] = [];
  const weights = Float64Array.of(1, 1, 1);
  const pools = [
    { reach: [0, 1], supply: Float64Array.of(5, 0, 7), draws: Int32Array.of(0, 2) },
    { reach: [0, 1], supply: Float64Array.of(1, 1, 1) },
  ];
  const demands = [
    { amount: 4, weights, takes: true },
    { amount: 4, weights, takes: false },
  ];
  shareSupply(pools, demands, 3, (_, capacity) => said.push([...capacity]));
  expect(said).toEqual([
    [6, 1, 8],
    [2, 0, 4],
  ]);
});
