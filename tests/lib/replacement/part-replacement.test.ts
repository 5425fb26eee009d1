import { expect, it } from 'vitest';
import { changeCosts, partReplacement } from '@/lib/replacement/part-replacement';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { wearShop } from '../../support/wear-shop';

const shop = wearShop();
const part = shop.facts.parts.find(({ role }) => role === 'die');
const found = part && partReplacement(shop.facts, shop.ensemble, part);

// source: hand. c_p = edge + planned change; c_f = edge + change in mid-job + spoilt end, which is the spool where it cannot be remade.
it('adds up what a change costs', () => {
  expect(changeCosts(12_000, DEFAULT_COSTS, 'ordinary')).toEqual({
    plannedCost: 12_600,
    failureCost: 18_000,
  });
  expect(changeCosts(12_000, DEFAULT_COSTS, 'precious').failureCost).toBe(105_000);
});

// source: published. The trade's worked example: the dearer the failure, the earlier the change, so "replace at" belongs to the job.
it('changes earlier for work that cannot be remade', () => {
  const { ordinary, precious } = found?.byValue ?? {};
  expect(precious?.atEnds).toBeLessThan(ordinary?.atEnds ?? Infinity);
  expect(precious?.saving).toBeGreaterThan(ordinary?.saving ?? 1);
  for (const value of [ordinary, precious])
    expect(value?.plannedPer100Minor).toBeLessThanOrEqual(value?.runPer100Minor ?? 0);
});

// source: hand. Without a price nothing can be said in money.
it('says nothing of a part without a price', () => {
  expect(part && partReplacement(shop.facts, shop.ensemble, { ...part, priceMinor: null })).toBeUndefined();
});
