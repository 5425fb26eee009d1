import { expect, it } from 'vitest';
import { costPerWear, type EdgeCycle } from '@/lib/end-costs/cost-per-wear';
import { residualAtHazard } from '@/lib/life/weibull';
import { streamOfKey } from '@/lib/numeric/random-stream';
import { costRate } from '@/lib/replacement/weibull-age';

const COSTS = { plannedCost: 100, failureCost: 300 };
const cycle = (wear: number, end: EdgeCycle['end']): EdgeCycle => ({ ends: wear, wear, end });

// source: other-software. R 4 survival: survfit on wear and on three states gives rmean(21) = 12.8228571429, planned 0.488571428571,
// mid-job 0.374285714286, 0.137142857143 left, taken as changed there: 174.857142857 ÷ 12.8228571429.
it('agrees with R’s product-limit and Aalen–Johansen estimates', () => {
  const wears = [3, 5, 5, 8, 9, 12, 14, 14, 20, 21];
  const ends = [1, 2, 0, 1, 0, 2, 1, 1, 2, 0].map((code) => (['open', 'planned', 'mid-job'] as const)[code]);
  const cycles = wears.map((wear, i) => cycle(wear, ends[i] ?? 'open'));
  const expected = (100 * (0.488571428571 + 0.137142857143) + 300 * 0.374285714286) / 12.8228571429;
  expect(costPerWear(cycles, COSTS)).toBeCloseTo(expected, 8);
  expect(costPerWear([...cycles].reverse(), COSTS)).toBeCloseTo(expected, 8);
});

// source: identity. Where every edge has ended it is the money over the wear.
it('is the plain ratio where nothing still cuts', () => {
  const cycles = [cycle(10, 'planned'), cycle(30, 'mid-job'), cycle(20, 'mid-job')];
  expect(costPerWear(cycles, COSTS)).toBeCloseTo(700 / 60, 12);
});

// source: formula. Weibull lives, changed at an age, a third of them still cutting: the long-run cost rate (Barlow and Hunter). 3 % for
// 4,000 edges; the plain ratio, which has those that still cut for free, is far below.
it('finds the long-run cost though a third of the edges still cut', () => {
  const [life, age, chance] = [{ shape: 3, scale: 100 }, 90, streamOfKey('cost per wear')];
  const cycles = Array.from({ length: 4000 }, (): EdgeCycle => {
    const lasts = residualAtHazard(life, { age: 0, hazard: -Math.log(chance()) });
    const seen = 200 * chance();
    const until = Math.min(lasts, age);
    if (seen < until) return cycle(seen, 'open');
    return cycle(until, lasts < age ? 'mid-job' : 'planned');
  });
  const known = costRate(life, COSTS, age);
  expect(Math.abs((costPerWear(cycles, COSTS) ?? 0) / known - 1)).toBeLessThan(0.03);
  const paid = cycles.reduce((sum, { end }) => sum + { planned: 100, 'mid-job': 300, open: 0 }[end], 0);
  expect(paid / cycles.reduce((sum, { wear }) => sum + wear, 0)).toBeLessThan(0.9 * known);
});

// source: hand. Nothing has ended: nothing is known.
it('says nothing where no edge has ended', () => {
  expect(costPerWear([cycle(10, 'open')], COSTS)).toBeNull();
  expect(costPerWear([], COSTS)).toBeNull();
});
