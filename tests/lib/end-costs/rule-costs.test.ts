import { expect, it } from 'vitest';
import type { EdgeCycle } from '@/lib/end-costs/cost-per-wear';
import { partChangeCosts, ruleCosts, wholeSaving } from '@/lib/end-costs/rule-costs';
import type { RuleCounts } from '@/lib/end-costs/rule-counts';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { BLADE, DIE } from '../../support/db';

const part = { ...DIE, priceMinor: 12_000 };
const cycles = (...of: readonly [number, EdgeCycle['end']][]): EdgeCycle[] =>
  of.map(([ends, end]) => ({ ends, wear: 10 * ends, end }));
const counts = (predicted: readonly EdgeCycle[], fixed: readonly EdgeCycle[]): RuleCounts => ({
  ...{ partId: DIE.id, kind: 'die', edges: predicted.length, wear: 3_000, ends: 300, usual: null },
  predicted: { planned: 2, midJob: 1, ends: 300 },
  fixed: { planned: 3, midJob: 0, ends: 200 },
  cycles: { predicted, fixed },
});
const ours = cycles([100, 'planned'], [120, 'planned'], [80, 'mid-job']);
const theirs = cycles([60, 'planned'], [70, 'planned'], [70, 'planned']);

// source: hand. Planned 12 600, mid-job 12 000 + 3 000 + 3 000 = 18 000. Estimate: 43 200 over 300 ends, 14 400 a hundred; count:
// 37 800 over 200, 18 900 a hundred. Saved 4 500 a hundred, over the log's 300 ends 13 500.
it('puts both rules into money', () => {
  const [found] = ruleCosts([counts(ours, theirs)], [part], DEFAULT_COSTS);
  expect(found).toMatchObject({ savedMinor: 13_500 });
  expect(found?.predictedPer100Minor).toBeCloseTo(14_400, 8);
  expect(found?.fixedPer100Minor).toBeCloseTo(18_900, 8);
  expect(ruleCosts([counts(ours, theirs)], [DIE], DEFAULT_COSTS)[0]?.savedMinor).toBeNull();
});

// source: hand. Leaving out each edge in turn: estimate 30 600/200, 30 600/180, 25 200/220; count 25 200/140, /130, /130 a unit of ends, times
// 300: 8 100, 7 153.846…, 23 790.2…; jackknife √(2/3·Σ(d − d̄)²).
it('says how much of a saving chance could have made', () => {
  const left = [25_200 / 140 - 30_600 / 200, 25_200 / 130 - 30_600 / 180, 25_200 / 130 - 25_200 / 220];
  const saved = left.map((each) => 300 * each);
  const mean = saved.reduce((sum, each) => sum + each, 0) / 3;
  const error = Math.sqrt((2 / 3) * saved.reduce((sum, each) => sum + (each - mean) ** 2, 0));
  const [found] = ruleCosts([counts(ours, theirs)], [part], DEFAULT_COSTS);
  expect(found?.savedErrorMinor).toBeCloseTo(error, 8);
  expect(found?.cheaper).toBe(13_500 > 1.6449 * error ? 'predicted' : 'not-told');
});

// source: identity. Rules that did the same on every edge cost the same; the other way round is the other one's saving.
it('takes no side', () => {
  const [same] = ruleCosts([counts(ours, ours)], [part], DEFAULT_COSTS);
  expect(same).toMatchObject({ savedMinor: 0, cheaper: 'not-told' });
  const many = (list: readonly EdgeCycle[]) => Array.from({ length: 30 }, () => list).flat();
  const [won] = ruleCosts([counts(many(ours), many(theirs))], [part], DEFAULT_COSTS);
  const [lost] = ruleCosts([counts(many(theirs), many(ours))], [part], DEFAULT_COSTS);
  expect([won?.cheaper, lost?.cheaper]).toEqual(['predicted', 'fixed']);
  expect(won?.savedMinor).toBe(-(lost?.savedMinor ?? 0));
  expect(wholeSaving([won, lost].flatMap((row) => row ?? []))).toMatchObject({
    savedMinor: 0,
    cheaper: 'not-told',
  });
});

// source: hand. A blade of 8 000 with two regrinds at 2 000: three edges for 12 000; without a price for regrinding it is not reground.
it('prices the edge as it is had', () => {
  const blade = { ...BLADE, priceMinor: 8_000, regrindLimit: 2 };
  expect(partChangeCosts(blade, DEFAULT_COSTS)).toEqual({ plannedCost: 4_600, failureCost: 10_000 });
  expect(partChangeCosts(blade, { ...DEFAULT_COSTS, regrindMinor: 0 })?.plannedCost).toBe(8_600);
  expect(partChangeCosts({ ...blade, priceMinor: 0 }, DEFAULT_COSTS)).toBeNull();
});
