import { expect, it } from 'vitest';
import { readShopFacts } from '@/db/queries/shop-facts';
import { listToolLogs } from '@/db/queries/tool-logs';
import { shopEndCosts } from '@/lib/outlook/shop-end-costs';
import { must } from '../../support/db';
import { ownShop } from '../../support/own-shop';
import { sender } from '../../support/send';

// source: identity. 12 ends logged, one of them spoilt: 11 good; the edge's share, fluid and the spoilt end add up to the end.
it('reads the costs of the ends off the shop’s log', () => {
  const db = ownShop();
  must(
    sender(db).cut('D-38-01', 12, {
      connectionId: '3-8-medium',
      materialId: '316-cw',
      goodEnds: 11,
      rejects: [{ cause: 'go-tight', count: 1 }],
    }),
  );
  const facts = readShopFacts(db, { today: '2026-03-02' });
  const rows = shopEndCosts({ logs: listToolLogs(db), lineEnds: new Map(), facts });
  const [row] = rows;
  expect(rows).toHaveLength(1);
  expect(row).toMatchObject({ kind: 'die', goodEnds: 11, spoiltEnds: 1, spoiltMinor: 3_000 });
  const sum = (row?.edgeMinor ?? 0) + (row?.fluidMinor ?? 0) + (row?.spoiltMinor ?? 0);
  expect((row?.perGoodEndMinor ?? 0) * 11).toBeCloseTo(sum, 6);
});
