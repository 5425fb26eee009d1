import { expect, it } from 'vitest';
import { ORDER_COLUMNS, orderCells, orderText } from '@/lib/orders/order-text';
import { DIE, HIGH, MEDIUM } from '../../support/db';

const part = { ...DIE, designation: '9/16-18 UNF-LH die, adjustable split', supplier: 'Ninefold Dies' };
const connections = [MEDIUM, HIGH];

it('writes an order for a mail, the hand in words', () => {
  const order = { id: 'PO-7', quantity: 2, supplier: 'Ninefold Dies', neededOnDay: '2026-04-01' };
  const text = orderText(order, { shopName: 'Tidewrack', part, connections });
  expect(text.split('\n').slice(0, 3)).toEqual([
    'Order PO-7 to Ninefold Dies',
    '',
    '2 × 9/16-18 UNF-LH die, adjustable split — left hand',
  ]);
  expect(text).toContain('Needed by 2026-04-01.');
  expect(text).toContain('Not right hand');
});

it('fills every column of the file; a draft has no promised day', () => {
  const order = {
    ...{
      id: 'PO-7',
      status: 'drafted',
      supplier: '',
      quantity: 2,
      receivedQuantity: 0,
      unitPriceMinor: 12_050,
    },
    ...{ placedOnDay: '2026-03-02', promisedOnDay: '2026-03-02', expectedOnDay: '2026-03-02', why: 'J-1.1' },
  };
  const cells = orderCells(order, part, connections);
  expect(cells).toHaveLength(ORDER_COLUMNS.length);
  const cell = (name: (typeof ORDER_COLUMNS)[number]) => cells[ORDER_COLUMNS.indexOf(name)];
  expect([cell('supplier'), cell('hand'), cell('unit_price'), cell('promised_on')]).toEqual([
    'Ninefold Dies',
    'left hand',
    '120.50',
    '',
  ]);
  expect(orderCells({ ...order, status: 'placed' }, undefined, connections)[10]).toBe('2026-03-02');
});
