import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  LEAD_TIME_PRIOR,
  leadDaysWithin,
  leadTimePrior,
  learnLeadTime,
  nextDelay,
  probabilityWithin,
} from '@/lib/lead-time/lead-time-belief';
import { relativeMiss } from '@/tests/support/relative-miss';

// source: formula. The 90 % point of the first order is quote × 1.5, the 10 % point quote ÷ 1.5, the median the quote.
it('says before any receipt what the prior says in shop words', () => {
  expect(leadDaysWithin(LEAD_TIME_PRIOR, 20, 0.9)).toBeCloseTo(30, 10);
  expect(leadDaysWithin(LEAD_TIME_PRIOR, 20, 0.1)).toBeCloseTo(20 / 1.5, 10);
  expect(leadDaysWithin(LEAD_TIME_PRIOR, 20, 0.5)).toBeCloseTo(20, 10);
  expect(probabilityWithin(LEAD_TIME_PRIOR, 20, 30)).toBeCloseTo(0.9, 12);
  expect(probabilityWithin(LEAD_TIME_PRIOR, 20, 0)).toBe(0);
});

// source: hand. Prior (0, 1, 2, 1), delays 0.2 and 0.6: mean .8/3, weight 3, shape 3,
// rate 1 + .08/2 + 1·2·.4²/(2·3) = 1.093333…
it('learns by the conjugate update', () => {
  const belief = learnLeadTime({ mean: 0, weight: 1, shape: 2, rate: 1, orders: 0 }, [0.2, 0.6]);
  expect(belief.mean).toBeCloseTo(0.8 / 3, 14);
  expect([belief.weight, belief.shape, belief.orders]).toEqual([3, 3, 2]);
  expect(belief.rate).toBeCloseTo(1 + 0.04 + 0.16 / 3, 14);
});

// source: identity. Learning one by one or all at once is the same.
it('does not care in how many steps it learns', () => {
  const delays = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { maxLength: 12 });
  fc.assert(
    fc.property(delays, (list) => {
      const atOnce = learnLeadTime(LEAD_TIME_PRIOR, list);
      const inSteps = list.reduce((belief, delay) => learnLeadTime(belief, [delay]), LEAD_TIME_PRIOR);
      expect(relativeMiss(atOnce.rate, inSteps.rate)).toBeLessThan(1e-11);
      expect(atOnce.mean).toBeCloseTo(inSteps.mean, 12);
    }),
  );
});

// source: formula. Twelve orders that took a quarter longer: the median comes near, the band narrows.
it('believes a supplier that is always a quarter late', () => {
  const late = learnLeadTime(LEAD_TIME_PRIOR, Array(12).fill(Math.log(1.25)));
  expect(leadDaysWithin(late, 20, 0.5)).toBeGreaterThan(24);
  expect(leadDaysWithin(late, 20, 0.5)).toBeLessThan(25);
  expect(nextDelay(late).scale).toBeLessThan(nextDelay(LEAD_TIME_PRIOR).scale / 1.5);
});

it('refuses a belief that is none', () => {
  expect(() => leadTimePrior({ giveOrTake: 1, worthOrders: 1 })).toThrow('leadTimePrior');
  expect(() => leadDaysWithin(LEAD_TIME_PRIOR, 0, 0.5)).toThrow('leadDaysWithin');
});
