import { expect, it } from 'vitest';
import { shopReplacement } from '@/lib/replacement/shop-replacement';
import { issueShop } from '../../support/issue-shop';

const { facts, ensemble } = issueShop();
const found = shopReplacement(facts, ensemble);

// source: hand. Dies before blades; three dies are here, those scrapped are not; worked out once.
it('covers every part and every edge that is here', () => {
  expect(found.parts.map(({ kind }) => kind)).toEqual(['die', 'blade']);
  expect(found.tools.map(({ toolId }) => toolId).sort()).toEqual(['D-31', 'D-32', 'D-33']);
  expect(shopReplacement(facts, ensemble)).toBe(found);
});

// source: hand. A part without a price is named.
it('names parts without a price', () => {
  const parts = facts.parts.map((part) => (part.role === 'die' ? { ...part, priceMinor: null } : part));
  expect(shopReplacement({ ...facts, parts }, ensemble).unpriced.map(({ role }) => role)).toEqual(['die']);
});
