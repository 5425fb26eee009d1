import 'server-only';
import { servedShop } from '@/db/client';
import { dataVersion } from '@/db/queries/entries';
import { readShopFacts } from '@/db/queries/shop-facts';
import { computeOutlook, type Outlook } from '@/lib/outlook/outlook';
import { today } from '../clock';

const KEY = Symbol.for('edgekeep.outlook');
const holder = globalThis as { [KEY]?: { readonly key: string; readonly outlook: Outlook } };

/** The outlook of a shop whose record is in memory only, where no other process can read it: worked out here. */
export function outlookInMemory(): Outlook {
  const { db, name } = servedShop();
  const day = today();
  const key = `${name} ${dataVersion(db)} ${day}`;
  const kept = holder[KEY];
  if (kept?.key === key) return kept.outlook;
  const outlook = computeOutlook(readShopFacts(db, { today: day }));
  holder[KEY] = { key, outlook };
  return outlook;
}
