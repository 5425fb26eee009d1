import { expect, it } from 'vitest';
import { buyUnder, weeklyNeed } from '@/lib/orders/buy-offer';
import { offersOf } from '@/lib/orders/part-offers';
import { partOutlooks } from '@/lib/orders/part-outlook';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { exactLives, ORDER_DIE, threadLine } from '../../support/order-shop';
import { shopRecord } from '../../support/shop-record';

const facts = shopRecord({ lines: [threadLine('J-1.1', 40, 10, 20), threadLine('J-2.1', 40, 30, 40)] });
const outlook = partOutlooks(facts, exactLives(50), 56).find(({ part }) => part.id === ORDER_DIE.id);
if (outlook === undefined) throw new Error('dies are needed');
const under = (change: object, costs = DEFAULT_COSTS) => {
  const [offer] = offersOf({ ...ORDER_DIE, priceMinor: 10_000, leadTimeDays: 14, ...change });
  if (offer === undefined) throw new Error('a part has an offer');
  return buyUnder(offer, outlook, facts, costs);
};

// source: hand. The first die on day 10, week 2; the second on day 32.5, week 5.
it('puts the need into weeks, less what is drafted', () => {
  expect(weeklyNeed(outlook)).toEqual([0, 1, 0, 0, 1, 0, 0, 0]);
  expect(weeklyNeed({ ...outlook, drafted: 1 })).toEqual([0, 0, 0, 0, 1, 0, 0, 0]);
});

// source: hand. An order of its own costs 25.00, keeping a 100.00 die three weeks 1.15: both in one order; where keeping costs
// more than ordering, one at a time. Packs of three: three. Six for the price break where that is cheaper than two.
it('orders in lots of least cost under the terms of sale', () => {
  expect(under({})).toMatchObject({ quantity: 2, priceMinor: 20_000 });
  expect(under({}, { ...DEFAULT_COSTS, orderMinor: 100 }).quantity).toBe(1);
  expect(under({ packSize: 3 })).toMatchObject({ quantity: 3, priceMinor: 30_000 });
  const breaks = { priceBreaks: [{ fromQuantity: 6, priceMinor: 3_000 }] };
  expect(under(breaks)).toMatchObject({ quantity: 6, priceMinor: 18_000 });
});

// source: hand. Needed on day 10, quoted for 14: late; quoted for 3, in time.
it('says how surely it comes in time, and nothing where no lead time is known', () => {
  expect(under({}).orderByInDays ?? 0).toBeLessThan(0);
  expect(under({ leadTimeDays: 3 }).inTimeToday ?? 0).toBeGreaterThan(0.9);
  expect(under({}).stoppedDaysPerWeek ?? 0).toBeGreaterThan(5);
  expect(under({ leadTimeDays: null })).toMatchObject({
    quantity: 2,
    orderByInDays: null,
    inTimeToday: null,
  });
  expect(under({ priceMinor: null })).toMatchObject({ quantity: 2, priceMinor: null });
});
