import 'server-only';
import { shopDb, shopName } from '@/db/client';
import { dataVersion } from '@/db/queries/entries';
import { readShopFacts } from '@/db/queries/shop-facts';
import { computeOutlook, type Outlook } from '@/lib/outlook/outlook';
import { today } from './clock';

interface Kept {
  readonly key: string;
  readonly outlook: Outlook;
}

const KEY = Symbol.for('edgekeep.outlook');
const holder = globalThis as { [KEY]?: Kept };

/** The shop's outlook, computed once for each version of its record and each day, and kept until either moves. */
export function shopOutlook(): Outlook {
  const db = shopDb();
  const day = today();
  const key = `${shopName()} ${dataVersion(db)} ${day}`;
  const kept = holder[KEY];
  if (kept?.key === key) return kept.outlook;
  const outlook = computeOutlook(readShopFacts(db, { today: day }));
  holder[KEY] = { key, outlook };
  return outlook;
}
