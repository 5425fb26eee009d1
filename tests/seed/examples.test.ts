import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { receiveTool } from '@/db/commands/receive-tool';
import { foundShop } from '@/db/commands/set-up-shop';
import { type Db, openDb } from '@/db/open';
import { readShopFacts } from '@/db/queries/shop-facts';
import type { ImportKind } from '@/lib/import/column';
import { computeOutlook } from '@/lib/outlook/outlook';
import { ShopSchema } from '@/lib/shop/shop-settings';
import { EXAMPLE_DAYS, exampleFiles } from '@/seed/example-shop';
import { importText } from '@/tests/support/csv-import';
import { may, must } from '@/tests/support/db';

const nowMs = Date.UTC(2026, 10, 25, 9);
const today = '2026-11-25';

/** An empty shop of 3/8 medium and 9/16 medium and high pressure. */
function emptyShop(): Db {
  const db = openDb(':memory:');
  const person = { id: 'lead', name: 'Lead', role: 'lead' as const };
  const connectionIds = ['3-8-medium', '9-16-medium', '9-16-high'];
  const shop = ShopSchema.parse({ name: 'Example' });
  const input = { entryId: 'set-up-0001', deviceAtMs: nowMs, shop, person, connectionIds };
  must(foundShop(db, may('set-up-shop'), input, { nowMs }));
  return db;
}

function importExample(db: Db, kind: ImportKind) {
  return must(importText(db, kind, readFileSync(`public/examples/${kind}.csv`, 'utf8'), nowMs));
}

function verdicts(db: Db) {
  const { lines } = computeOutlook(readShopFacts(db, { today }));
  return lines.map(({ jobId, verdict, blockers }) => ({
    jobId,
    verdict,
    blockers: blockers.map(({ role, kind }) => `${role} ${kind}`),
  }));
}

// source: identity. The files that ship are what the script writes.
it.each(['tools', 'cuts', 'jobs'] as const)('ships the %s file as written by its script', (kind) => {
  expect(readFileSync(`public/examples/${kind}.csv`, 'utf8')).toBe(exampleFiles(EXAMPLE_DAYS)[kind]);
});

// source: hand. The example is told so that nothing but the missing 9/16 die stands in the way of one of five jobs.
it('imports into an empty shop, shows one size that cannot be made, and is mended by receiving a die', () => {
  const db = emptyShop();
  for (const kind of ['tools', 'cuts', 'jobs'] as const) {
    expect(importExample(db, kind)).toMatchObject({ errorCount: 0, alreadyThere: 0 });
  }
  const before = verdicts(db);
  expect(before.filter(({ verdict }) => verdict !== 'can-make')).toEqual([
    { jobId: 'E-102', verdict: 'cannot-make-now', blockers: ['die missing'] },
  ]);
  expect(before).toHaveLength(5);
  const die = {
    ...{ entryId: 'receive-0001', deviceAtMs: nowMs, reason: '', toolId: 'D-56-04', partId: 'die-9-16' },
    ...{
      hand: 'LH' as const,
      lot: '',
      receivedOnDay: today,
      opening: { known: 'new' as const },
      orderId: null,
    },
    ...{ dueOnDay: null, expiresOnDay: null, openedOnDay: null, levelMl: null },
  };
  must(receiveTool(db, may('receive-tool'), die, { nowMs }));
  expect(verdicts(db).filter(({ verdict }) => verdict !== 'can-make')).toEqual([]);
});

// source: identity. The same files twice change nothing.
it('takes the same files twice without a change', () => {
  const db = emptyShop();
  const count = () => db.$client.prepare('SELECT count(*) FROM entry').pluck().get();
  for (const kind of ['tools', 'cuts', 'jobs'] as const) importExample(db, kind);
  const entries = count();
  for (const kind of ['tools', 'cuts', 'jobs'] as const) {
    expect(importExample(db, kind)).toMatchObject({ newRows: 0, errorCount: 0 });
  }
  expect(count()).toBe(entries);
});
