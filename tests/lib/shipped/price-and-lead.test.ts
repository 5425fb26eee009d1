import { expect, it } from 'vitest';
import { priceAndLead } from '@/lib/shipped/price-and-lead';

// source: hand. Middles of the usual ranges: (60 + 180) ÷ 2 = 120, 2 to 6 weeks = 28 days; (120 + 400) ÷ 2 = 260,
// 4 to 10 weeks = 49; (40 + 120) ÷ 2 = 80, 3 to 10 days = 6.5; (15 + 40) ÷ 2 = 27.50, 2 to 7 days = 4.5.
it.each([
  ['die', 0.5625, 12_000, 28],
  ['die', 1, 26_000, 49],
  ['blade', 0.375, 8_000, 7],
  ['fluid', 0.375, 2_750, 5],
] as const)('a %s for %s in costs %s and takes %s days', (role, odIn, priceMinor, leadTimeDays) => {
  expect(priceAndLead(role, odIn)).toEqual({ priceMinor, leadTimeDays });
});

// source: identity. No figure is better than a made-up one.
it('says nothing where there is no figure', () => {
  expect(priceAndLead('torque-wrench', 0.5625)).toEqual({ priceMinor: null, leadTimeDays: null });
});
