import { expect, it } from 'vitest';
import { wayLink } from '@/app/_shared/words/way-words';
import type { WayOut } from '@/lib/outlook/ways-out';
import { orderFacts, setParts, TODAY } from '../../support/shop-record';

const part = setParts().find(({ role }) => role === 'die');
if (part === undefined) throw new Error('no die');
const order = (expectedOnDay: string) => orderFacts({ id: 'PO 7/a', partId: part.id, expectedOnDay });

// source: hand. Every way out is a link that says what it does; keys with odd letters survive the address.
it.each<[WayOut, string, string]>([
  [
    { kind: 'add-size', connectionId: '1-high' },
    '/sizes/new?size=1&service=high',
    'Add this size to the table',
  ],
  [{ kind: 'add-material', materialId: 'tin' }, '/sizes/materials/new', 'Add the material'],
  [
    { kind: 'add-part', role: 'go-ring' },
    '/parts/new?kind=go-ring',
    'Add a GO ring for this size to the parts',
  ],
  [{ kind: 'place-order', part }, '/plan/orders/new?part=die-3-8', `Order: ${part.name}`],
  [
    { kind: 'see-order', order: order('2026-03-14'), late: false },
    '/plan/orders#PO%207%2Fa',
    'Order PO 7/a: expected in 12 days, Sat 14 Mar',
  ],
  [
    { kind: 'see-order', order: order('2026-03-01'), late: true },
    '/plan/orders#PO%207%2Fa',
    'Order PO 7/a: overdue, was expected yesterday, Sun 1 Mar',
  ],
  [{ kind: 'receive', part, orderId: null }, '/tools/receive?part=die-3-8', 'Receive one now'],
  [
    { kind: 'receive', part, orderId: 'PO 7/a' },
    '/tools/receive?order=PO%207%2Fa',
    'Receive it on order PO 7/a',
  ],
  [{ kind: 'see-tool', toolId: 'D-38-11' }, '/tools/D-38-11', 'Open D-38-11'],
  [{ kind: 'change-dates', jobId: 'J-086' }, '/plan/jobs/J-086', 'Change the dates'],
])('%j', (way, href, label) => {
  expect(wayLink(way, TODAY)).toMatchObject({ href, label });
});
