import { expect, it } from 'vitest';
import { addDays } from '@/lib/calendar/day';
import { chaseList } from '@/lib/orders/chase-list';
import { exactLives, ORDER_DIE, threadLine } from '../../support/order-shop';
import { orderFacts, shopRecord, TODAY } from '../../support/shop-record';

const order = (id: string, expected: number, change: object = {}) =>
  orderFacts({
    id,
    partId: ORDER_DIE.id,
    statedOnDay: TODAY,
    expectedOnDay: addDays(TODAY, expected),
    ...change,
  });
const list = (orders: ReturnType<typeof order>[], lines: ReturnType<typeof threadLine>[] = []) =>
  chaseList(shopRecord({ orders, lines }), exactLives(50));

it('asks first after what is late, then what a line waits for, then what is due soon', () => {
  const late = order('PO-LATE', -3, { statedOnDay: addDays(TODAY, -20) });
  const found = list([order('PO-FAR', 60), order('PO-SOON', 5), late]);
  expect(found.map((row) => [row.order.id, row.reason])).toEqual([
    ['PO-LATE', 'late'],
    ['PO-SOON', 'due-soon'],
    ['PO-FAR', null],
  ]);
  expect(found[0]).toMatchObject({ lateDays: 3, supplier: ORDER_DIE.supplier });
});

it('does not ask again a few days after somebody did', () => {
  expect(list([order('PO-SOON', 5, { chasedOnDay: addDays(TODAY, -2) })])[0]?.reason).toBeNull();
  expect(list([order('PO-SOON', 5, { chasedOnDay: addDays(TODAY, -9) })])[0]?.reason).toBe('due-soon');
});

// source: hand. The only die is on order for day 30, the line runs from day 10 to 20: it waits for it in nearly all futures. A
// line that no order could save does not wait for one.
it('names the lines that wait for an order, and only those that it would save', () => {
  const [row] = list([order('PO-1', 30)], [threadLine('J-1.1', 40, 10, 20)]);
  expect(row?.reason).toBe('line-waits');
  expect(row?.waiting.map(({ lineId }) => lineId)).toEqual(['J-1.1']);
  expect(row?.waiting[0]?.probability).toBeGreaterThan(0.8);
  expect(row?.usable && row.usable.early <= row.usable.median && row.usable.median <= row.usable.late).toBe(
    true,
  );
  expect(list([order('PO-1', 30)], [threadLine('J-1.1', 90, 10, 20)])[0]?.waiting).toEqual([]);
});
