import { expect, it } from 'vitest';
import { edgePriceMinor, ruleCosts } from '@/lib/end-costs/rule-costs';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { BLADE, DIE } from '../../support/db';

const part = { ...DIE, priceMinor: 12_000 };
const counts = {
  ...{ partId: DIE.id, kind: 'die' as const, edges: 3 },
  predicted: { planned: 2, midJob: 1, ends: 300 },
  fixed: { planned: 3, midJob: 0, ends: 200 },
};

// source: hand. Planned 12 600, mid-job 12 000 + 3 000 + 3 000 = 18 000. Estimate: 43 200 over 300 ends, 14 400 a hundred; count:
// 37 800 over 200, 18 900 a hundred. Saved 4 500 a hundred, over 300 ends 13 500.
it('puts both rules into money', () => {
  expect(ruleCosts([counts], [part], DEFAULT_COSTS)[0]).toMatchObject({
    ...{ predictedPer100Minor: 14_400, fixedPer100Minor: 18_900, savedMinor: 13_500 },
  });
  expect(ruleCosts([counts], [DIE], DEFAULT_COSTS)[0]?.savedMinor).toBeNull();
});

// source: hand. A blade of 8 000 with two regrinds at 2 000: three edges for 12 000.
it('spreads a blade and its regrinds over its edges', () => {
  expect(edgePriceMinor({ ...BLADE, priceMinor: 8_000 }, DEFAULT_COSTS)).toBe(4_000);
  expect(edgePriceMinor(part, DEFAULT_COSTS)).toBe(12_000);
});
