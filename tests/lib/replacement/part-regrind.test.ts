import { expect, it } from 'vitest';
import { partRegrind } from '@/lib/replacement/part-regrind';
import { partReplacement } from '@/lib/replacement/part-replacement';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { edgeFacts, use } from '../../support/edge-facts';
import { toolFacts } from '../../support/shop-record';
import { wearShop } from '../../support/wear-shop';

const { facts, ensemble } = wearShop({
  guesses: [{ partId: 'blade-3-8-medium', connectionId: '3-8-medium', ends: 60, giveOrTake: 2 }],
  tools: [toolFacts({ id: 'B', role: 'blade' })],
  edges: [edgeFacts('B', { use: [use(5)] })],
});
const blade = facts.parts.find(({ role }) => role === 'blade');

// source: identity. The page on replacement shows the very decision that orders count on; asked again it is not worked out again.
it('is one decision for all who ask', () => {
  if (blade === undefined) throw new Error('the shop has a blade');
  const found = partRegrind(facts, ensemble, blade);
  expect(found?.edges.length).toBe(blade.regrindLimit + 1);
  expect(partRegrind(facts, ensemble, blade)).toBe(found);
  expect(partReplacement(facts, ensemble, blade)?.regrind).toBe(found);
});

// source: hand. A regrind as dear as ten new blades never pays; one without a price, and a part that is not reground, is not asked about.
it('follows the price', () => {
  if (blade === undefined) throw new Error('the shop has a blade');
  const costs = { ...DEFAULT_COSTS, regrindMinor: 10 * (blade.priceMinor ?? 1) };
  expect(partRegrind({ ...facts, costs }, ensemble, blade)?.bestRegrinds).toBe(0);
  expect(partRegrind({ ...facts, costs: { ...costs, regrindMinor: 0 } }, ensemble, blade)).toBeNull();
  expect(partRegrind(facts, ensemble, { ...blade, regrindLimit: 0 })).toBeNull();
});
