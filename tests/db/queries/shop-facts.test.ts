import { expect, it } from 'vitest';
import { listOpenLines } from '@/db/queries/jobs';
import { listOpenOrders } from '@/db/queries/orders';
import { findShop } from '@/db/queries/shop';
import { readShopFacts } from '@/db/queries/shop-facts';
import { listConnections, listLifeGuesses, listMaterials, listParts } from '@/db/queries/tables';
import { listEdges, listTools } from '@/db/queries/tools';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { must, testDb } from '../../support/db';
import { ownShop } from '../../support/own-shop';
import { sender } from '../../support/send';

// source: identity. The facts are what the queries give, and the day is the one asked for.
it('readShopFacts reads the whole record at once', () => {
  const db = ownShop();
  const send = sender(db);
  const size = { connectionId: '3-8-medium', materialId: '316-cw' };
  must(send.cut('D-38-01', 12, size));
  must(
    send.order({
      id: 'PO-1',
      partId: 'die-3-8',
      quantity: 1,
      placedOnDay: '2026-03-01',
      expectedOnDay: '2026-03-14',
    }),
  );
  const line = { ...size, lineNo: 1, heat: '', ends: 4, operations: ['thread'], value: 'ordinary' };
  must(
    send.plan({
      id: 'J-1',
      title: '',
      lines: [{ ...line, startOnDay: '2026-03-09', dueOnDay: '2026-03-13' }],
    }),
  );
  const facts = readShopFacts(db, { today: '2026-03-02' });
  expect(facts).toMatchObject({
    today: '2026-03-02',
    shop: findShop(db),
    connections: listConnections(db),
    materials: listMaterials(db),
    parts: listParts(db),
    guesses: listLifeGuesses(db),
    tools: listTools(db),
    edges: listEdges(db),
    lines: listOpenLines(db),
    orders: listOpenOrders(db),
  });
  for (const list of [facts.parts, facts.guesses, facts.tools, facts.edges, facts.lines, facts.orders])
    expect(list.length).toBeGreaterThan(0);
});

// source: hand. Stated.
it('an empty record has no facts, and is still one', () => {
  const { shop, costs, readingSettings, today, fluidLog, ...lists } = readShopFacts(testDb(), {
    today: '2026-03-02',
  });
  expect([shop, readingSettings, costs, today]).toEqual([undefined, undefined, DEFAULT_COSTS, '2026-03-02']);
  expect(fluidLog).toEqual({ levels: [], rows: [] });
  expect(Object.values(lists).every((list) => list.length === 0)).toBe(true);
});
