import { expect, it } from 'vitest';
import { readShopFacts } from '@/db/queries/shop-facts';
import { listToolLogs } from '@/db/queries/tool-logs';
import { shopEndCosts } from '@/lib/outlook/shop-end-costs';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { must } from '../../support/db';
import { ownShop } from '../../support/own-shop';
import { sender } from '../../support/send';

const GAUGING = {
  calibrations: [
    { toolId: 'G', role: 'go-ring' as const, fitsConnectionIds: ['3-8-medium'], calibrations: 1 },
  ],
  looks: [],
  accepted: new Map([['3-8-medium', 50]]),
};

// source: identity. 12 ends logged, one of them spoilt: 11 good; the edge's share, fluid, the spoilt end and its gauges add up to the end;
// a ring calibrated once at 8 500 for 50 accepted ends: 170 an end.
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
  const costed = { ...facts, costs: { ...DEFAULT_COSTS, calibrationMinor: 8_500 } };
  const record = { logs: listToolLogs(db), lineEnds: new Map() };
  const rows = shopEndCosts({ ...record, facts: costed, gauging: GAUGING });
  const [row] = rows;
  expect(rows).toHaveLength(1);
  expect(row).toMatchObject({ kind: 'die', goodEnds: 11, spoiltEnds: 1, spoiltMinor: 3_000 });
  expect(row?.gaugeMinor).toBeCloseTo(11 * 170, 9);
  const sum =
    (row?.edgeMinor ?? 0) + (row?.fluidMinor ?? 0) + (row?.spoiltMinor ?? 0) + (row?.gaugeMinor ?? 0);
  expect((row?.perGoodEndMinor ?? 0) * 11).toBeCloseTo(sum, 6);
  expect(shopEndCosts({ ...record, facts, gauging: GAUGING })[0]?.gaugeMinor).toBe(0);
});
