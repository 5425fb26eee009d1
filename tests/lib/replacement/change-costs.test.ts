import { expect, it } from 'vitest';
import { changeCosts } from '@/lib/replacement/change-costs';
import { DEFAULT_COSTS } from '@/lib/shop/costs';

// source: hand. c_p = edge + planned change; c_f = edge + change in mid-job + spoilt end, which is the spool where it cannot be remade.
it('adds up what a change costs', () => {
  expect(changeCosts(12_000, DEFAULT_COSTS, 'ordinary')).toEqual({
    plannedCost: 12_600,
    failureCost: 18_000,
  });
  expect(changeCosts(12_000, DEFAULT_COSTS, 'precious').failureCost).toBe(105_000);
});
