import { expect, it } from 'vitest';
import { partReplacement } from '@/lib/replacement/part-replacement';
import { wearShop } from '../../support/wear-shop';

const shop = wearShop();
const part = shop.facts.parts.find(({ role }) => role === 'die');
const found = part && partReplacement(shop.facts, shop.ensemble, part);

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
