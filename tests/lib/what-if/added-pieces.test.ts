import { expect, it } from 'vitest';
import { newOrderDays, orderArrivalDays } from '@/lib/outlook/order-arrivals';
import { newOrder, newPieces } from '@/lib/what-if/added-pieces';
import { TODAY } from '../../support/shop-record';
import { whatIfFacts } from '../../support/what-if-shop';

const facts = whatIfFacts();
const partOf = (role: string) => {
  const part = facts.parts.find((known) => known.role === role);
  if (part === undefined) throw new Error(`no ${role}`);
  return part;
};

// source: hand. An edge is new, a gauge comes with a year of calibration.
it('newPieces are what the shop would have on record', () => {
  const dies = newPieces(facts, partOf('die'), { quantity: 2, mark: 'w' });
  expect(dies.tools.map(({ id }) => id)).toEqual(['~w-1 die-3-8', '~w-2 die-3-8']);
  expect(dies.edges).toMatchObject([
    { toolId: '~w-1 die-3-8', edgeNo: 1, use: [] },
    { toolId: '~w-2 die-3-8', edgeNo: 1, use: [] },
  ]);
  const [ring] = newPieces(facts, partOf('go-ring'), { quantity: 1, mark: 'w' }).tools;
  expect(ring).toMatchObject({ state: 'in-crib', dueOnDay: '2027-03-02' });
});

// source: identity. Letters, digits and dashes sort before a tilde.
it('newOrder stands after every order of the shop', () => {
  const order = newOrder(facts, {
    ...{ partId: 'die-3-8', quantity: 1, promisedOnDay: '2026-04-01', supplier: 'Ninefold', mark: 'w' },
  });
  expect(order).toMatchObject({ statedOnDay: TODAY, expectedOnDay: '2026-04-01' });
  expect(['PO-9', 'zz', order.id].sort().at(-1)).toBe(order.id);
});

// source: identity. Quoted for the 30 days from 2 March to 1 April, a trial order comes on the days of one that might be placed.
it('newOrder comes on the days of an order that might be placed with that supplier', () => {
  const trial = {
    partId: 'die-3-8',
    quantity: 1,
    promisedOnDay: '2026-04-01',
    supplier: 'Ninefold',
    mark: 'w',
  };
  const days = orderArrivalDays(facts, newOrder(facts, trial), partOf('die'), 64);
  const offer = { partId: 'die-3-8', supplier: 'Ninefold', leadTimeDays: 30 };
  expect([...(days ?? [])]).toEqual([...newOrderDays(facts, offer, 64)]);
  const other = orderArrivalDays(
    facts,
    newOrder(facts, { ...trial, supplier: 'Tenfold' }),
    partOf('die'),
    64,
  );
  expect([...(other ?? [])]).not.toEqual([...(days ?? [])]);
});
