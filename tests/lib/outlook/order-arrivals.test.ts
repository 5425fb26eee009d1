import { expect, it } from 'vitest';
import { addDays } from '@/lib/calendar/day';
import { leadDaysWithin } from '@/lib/lead-time/lead-time-belief';
import { beliefOf, newOrderDays, orderArrivalDays, supplierOf } from '@/lib/outlook/order-arrivals';
import { orderFacts } from '../../support/shop-record';

const TODAY = '2026-03-02';
const PART = { supplier: 'Ninefold Dies' };
const late = (n: number) => ({
  ...{ orderId: `PO-${n}`, partId: 'die', supplier: 'Ninefold Dies', placedOnDay: '2025-10-01' },
  ...{ promisedOnDay: '2025-10-21', firstReceivedOnDay: '2025-11-10', receivedOnDay: '2025-11-10' },
});
const HISTORY = { today: TODAY, deliveries: Array.from({ length: 8 }, (_, n) => late(n)) };
const median = (values: Int32Array | undefined) => Int32Array.from(values ?? []).sort()[1023];

it('takes the part’s supplier where the order names none', () => {
  expect([
    supplierOf({}, PART),
    supplierOf({ supplier: '' }, PART),
    supplierOf({ supplier: 'Other' }, PART),
  ]).toEqual(['Ninefold Dies', 'Ninefold Dies', 'Other']);
});

// source: formula. Eight orders that took twice as long as promised: the next one, placed today for 20 days, is expected at
// the median of what is now believed, plus a day for the receiving check; of another supplier nothing is known.
it('expects of a supplier what it achieved, not what it promises', () => {
  const order = orderFacts({
    id: 'PO-9',
    partId: 'die',
    statedOnDay: TODAY,
    expectedOnDay: addDays(TODAY, 20),
  });
  const belief = beliefOf(HISTORY, 'Ninefold Dies');
  const days = orderArrivalDays(HISTORY, order, PART);
  expect(Math.abs((median(days) ?? 0) - 1 - leadDaysWithin(belief, 20, 0.5))).toBeLessThanOrEqual(1);
  expect(median(days)).toBeGreaterThan(33);
  expect(median(orderArrivalDays(HISTORY, { ...order, supplier: 'Other' }, PART))).toBeLessThan(23);
});

it('knows nothing of an order whose day nobody wrote down', () => {
  expect(orderArrivalDays(HISTORY, orderFacts({ id: 'PO-9', partId: 'die' }), PART)).toBeUndefined();
});

it('draws a new order with the part’s and the supplier’s own luck', () => {
  const offer = { partId: 'die', supplier: 'Ninefold Dies', leadTimeDays: 20 };
  expect([...newOrderDays(HISTORY, offer)]).toEqual([...newOrderDays(HISTORY, offer)]);
  expect([...newOrderDays(HISTORY, { ...offer, partId: 'blade' })]).not.toEqual([
    ...newOrderDays(HISTORY, offer),
  ]);
  const quicker = newOrderDays(HISTORY, { ...offer, leadTimeDays: 10 });
  expect(newOrderDays(HISTORY, offer).every((day, k) => day >= (quicker[k] ?? 0))).toBe(true);
});
