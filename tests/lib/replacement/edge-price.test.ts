import { expect, it } from 'vitest';
import { allowedRegrinds, edgePriceMinor } from '@/lib/replacement/edge-price';

// source: hand. 8 000 and two regrinds at 2 000: three edges for 12 000.
it('spreads a blade and its regrinds over its edges', () => {
  expect(edgePriceMinor({ priceMinor: 8_000 }, { regrinds: 2, regrindMinor: 2_000 })).toBe(4_000);
  expect(edgePriceMinor({ priceMinor: 8_000 }, { regrinds: 0, regrindMinor: 2_000 })).toBe(8_000);
  expect(edgePriceMinor({ priceMinor: null }, { regrinds: 2, regrindMinor: 2_000 })).toBeNull();
});

// source: hand. A die is not reground; without a price nothing is said of regrinding.
it('knows how often a piece may be reground', () => {
  expect(allowedRegrinds({ role: 'blade', regrindLimit: 3 }, { regrindMinor: 1 })).toBe(3);
  expect(allowedRegrinds({ role: 'blade', regrindLimit: 3 }, { regrindMinor: 0 })).toBe(0);
  expect(allowedRegrinds({ role: 'die', regrindLimit: 3 }, { regrindMinor: 1 })).toBe(0);
});
