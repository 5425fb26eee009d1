import { invariant } from '../../lib/invariant';
import type { Db } from '../open';
import { derive } from './derive';
import type { EntryRow } from './entry-row';
import { insert } from './statements';

/**
 * Copies the whole ledger into a fresh database and derives every kept table from it anew. What a shop keeps must equal
 * what its replay gives, row for row.
 */
export function replay(from: Db, into: Db): void {
  const source = from.$client;
  const target = into.$client;
  target
    .transaction(() => {
      const empty = target.prepare('SELECT NOT EXISTS (SELECT 1 FROM entry) AS yes').get() as { yes: number };
      invariant(empty.yes === 1, 'replay requires a fresh database');
      const rows = source.prepare('SELECT * FROM entry ORDER BY seq').iterate() as Iterable<EntryRow>;
      for (const row of rows) insert(target, 'entry', { ...row });
      derive(target);
      const files = source.prepare('SELECT * FROM attachment').iterate() as Iterable<Record<string, never>>;
      for (const file of files) insert(target, 'attachment', { ...file });
    })
    .immediate();
}
