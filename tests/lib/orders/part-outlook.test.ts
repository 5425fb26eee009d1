import { expect, it } from 'vitest';
import { addDays } from '@/lib/calendar/day';
import { piecesWithin } from '@/lib/orders/part-need';
import { partOutlooks } from '@/lib/orders/part-outlook';
import { exactLives, ORDER_DIE, threadLine } from '../../support/order-shop';
import { orderFacts, shopRecord, TODAY } from '../../support/shop-record';

const lines = [threadLine('J-1.1', 40, 10, 20), threadLine('J-2.1', 40, 30, 40)];
const outlook = (change: object = {}, days = 84) =>
  partOutlooks(shopRecord({ lines, ...change }), exactLives(50), days).find(
    ({ part }) => part.id === ORDER_DIE.id,
  );

// source: hand. 80 ends at 50 a die: two; within 25 days only the first job's.
it('says what the plan needs within the horizon, on order and drafted beside it', () => {
  const found = outlook({
    drafts: [{ id: 'PO-9', partId: ORDER_DIE.id, quantity: 2 }],
    orders: [orderFacts({ id: 'PO-8', partId: 'another', quantity: 5 })],
  });
  expect(found && [...new Set(piecesWithin(found.planned, 84))]).toEqual([2]);
  expect(found && [...new Set(piecesWithin(found.planned, 25))]).toEqual([1]);
  expect(found).toMatchObject({ drafted: 2, onOrder: 0, service: 0.9, kind: 'die' });
  expect(found?.lines.map(({ lineId }) => lineId)).toEqual(['J-1.1', 'J-2.1']);
});

it('is as sure as the most precious line that it serves asks', () => {
  const precious = lines.map((line, i) => ({ ...line, value: i === 0 ? ('precious' as const) : line.value }));
  expect(outlook({ lines: precious })?.service).toBe(0.95);
});

// source: hand. Two on order, promised for day 26 and said today: nothing bought with a lead time of 300 days comes sooner. Job 1
// (days 10 to 20) runs short and waits for them; nothing is to be bought, and both figures say so.
it('tells what only waits for an order from what must be bought', () => {
  const parts = shopRecord().parts.map((part) =>
    part.id === ORDER_DIE.id ? { ...part, leadTimeDays: 300, offers: [] } : part,
  );
  const orders = [
    orderFacts({ id: 'PO-8', partId: ORDER_DIE.id, quantity: 2, expectedOnDay: addDays(TODAY, 25) }),
  ];
  const found = outlook({ parts, orders });
  expect(found && [...new Set(piecesWithin(found.total, 84))]).toEqual([0]);
  expect(found && [...new Set(piecesWithin(found.short, 84))]).toEqual([1]);
  expect(found?.lines.map(({ lineId }) => lineId)).toEqual(['J-1.1']);
});
