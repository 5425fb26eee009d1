import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { shopNames } from '@/app/_server/names';
import { shopOutlook } from '@/app/_server/outlook';
import type { Db } from '@/db/open';
import { must } from '../support/db';
import { ownShop } from '../support/own-shop';
import { sender } from '../support/send';

/** Where db/client keeps the shop being served, and the app the outlook computed for it. */
const holder = globalThis as { [key: symbol]: unknown };
const SERVED = Symbol.for('edgekeep.opened-shop');
const KEPT = Symbol.for('edgekeep.outlook');

function serve(name: string, db: Db): void {
  holder[SERVED] = { name, db };
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date(2026, 2, 2, 12) });
});
afterEach(() => {
  vi.useRealTimers();
  delete holder[SERVED];
  delete holder[KEPT];
});

// source: hand. The outlook is computed once for each version of the record, each day and each shop.
it('the outlook is kept until the record, the day or the shop moves', async () => {
  const db = ownShop();
  serve('shop', db);
  const first = await shopOutlook();
  expect(first.facts.today).toBe('2026-03-02');
  expect(await shopOutlook()).toBe(first);
  const size = { connectionId: '3-8-medium', materialId: '316-cw' };
  expect(sender(db).cut('D-38-99', 4, size).ok).toBe(false);
  expect(await shopOutlook()).toBe(first);
  const { id } = must(sender(db).cut('D-38-01', 40, size));
  const cut = await shopOutlook();
  expect(cut.ensemble.tool('D-38-01')?.exposure).toMatchObject([{ base: 420 }]);
  must(sender(db).reverse(id));
  expect((await shopOutlook()).ensemble.tool('D-38-01')?.exposure).toEqual([]);
  vi.setSystemTime(new Date(2026, 2, 3, 12));
  expect((await shopOutlook()).facts.today).toBe('2026-03-03');
  const other = ownShop({ without: ['die'] });
  serve('demo', other);
  expect((await shopOutlook()).facts.tools.some(({ role }) => role === 'die')).toBe(false);
});

// source: hand. A size without a table row is still named by its key; what is no key at all is shown as it is.
it('names stand for the keys that entries carry', () => {
  serve('shop', ownShop());
  const names = shopNames();
  expect([names.person('robin'), names.person('gone')]).toEqual(['Robin Vale', 'gone']);
  expect(names.connection('3-8-medium')).toBe('3⁄8 medium pressure');
  expect(names.connection('1-high')).toBe('1 high pressure');
  expect(names.connection('what')).toBe('what');
  expect([names.material('316-cw'), names.material('tin')]).toEqual(['316 cold-worked', 'tin']);
});
