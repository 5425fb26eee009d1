import { countIn } from '@/db/commands/count-in';
import { foundShop } from '@/db/commands/set-up-shop';
import type { Db } from '@/db/open';
import { listParts } from '@/db/queries/tables';
import { CountInInput, FoundShopInput } from '@/lib/shop/set-up-input';
import type { Role } from '@/lib/shop/vocabulary';
import { CALIBRATED_ROLES } from '@/lib/shop/vocabulary';
import { ENV, entered, may, must, testDb } from './db';

/** A shop of one's own as its first day leaves it: 3/8 medium pressure in use, one of everything but the roles left out. */
export function ownShop({ without = [] as readonly Role[] } = {}): Db {
  const db = testDb();
  const founding = FoundShopInput.parse({
    ...entered(),
    shop: { name: 'A shop' },
    person: { id: 'robin', name: 'Robin Vale', role: 'attendant' },
    connectionIds: ['3-8-medium'],
  });
  must(foundShop(db, may('set-up-shop'), founding, ENV));
  const counts = listParts(db)
    .filter(({ role }) => !without.includes(role))
    .map(({ id: partId, role }) => ({
      partId,
      count: 1,
      opening: 'new',
      dueOnDay: CALIBRATED_ROLES.includes(role) ? '2026-12-31' : null,
      levelMl: role === 'fluid' ? 1000 : null,
    }));
  const counting = CountInInput.parse({ ...entered(), onDay: '2026-03-02', counts });
  must(countIn(db, may('receive-tool'), counting, ENV));
  return db;
}
