import { expect, it } from 'vitest';
import { exportOrders } from '@/db/queries/export-orders';
import { DIE, must, testShop } from '../../support/db';
import { sender } from '../../support/send';

// source: hand.
it('writes every order as a row, or only those to be placed', () => {
  const db = testShop();
  must(
    sender(db).order({
      ...{ id: 'PO-1', partId: DIE.id, quantity: 2, placedOnDay: '2026-02-01', expectedOnDay: '2026-02-21' },
      ...{ supplier: '=Ninefold', unitPriceMinor: 12_000 },
    }),
  );
  const [head, row] = exportOrders(db, 'all').split('\r\n');
  expect(head).toContain('order,status,supplier,part,designation,hand');
  expect(row).toContain("PO-1,placed,'=Ninefold,die-56");
  expect(row).toContain('left hand,2,0,120.00,2026-02-01,2026-02-21');
  expect(exportOrders(db, 'to-place').trim().split('\r\n')).toHaveLength(1);
});
