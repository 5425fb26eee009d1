import { expect, it } from 'vitest';
import { achievedDays, logDelay, quotedDays } from '@/lib/lead-time/delivery';

const ORDER = {
  orderId: 'PO-1',
  partId: 'die',
  supplier: 'Ninefold Dies',
  placedOnDay: '2026-03-01',
  promisedOnDay: '2026-03-11',
  firstReceivedOnDay: '2026-03-11',
  receivedOnDay: '2026-03-21',
};

// source: hand. Promised for the 10th day, all there on the 20th: twice as long, ln 2.
it('compares what came with the first promise', () => {
  expect([quotedDays(ORDER), achievedDays(ORDER)]).toEqual([10, 20]);
  expect(logDelay(ORDER)).toBeCloseTo(Math.log(2), 15);
});

// source: hand. Over the counter: placed, promised and received on one day counts as one day, no delay.
it('counts a day at least', () => {
  const same = { ...ORDER, promisedOnDay: '2026-03-01', receivedOnDay: '2026-03-01' };
  expect([quotedDays(same), achievedDays(same), logDelay(same)]).toEqual([1, 1, 0]);
});
