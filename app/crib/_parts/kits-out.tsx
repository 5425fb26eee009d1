import type { Route } from 'next';
import Link from 'next/link';
import { count, dayText, listWords } from '@/app/_shared/format';
import { EmptyState } from '@/app/_shared/ui';
import type { Names } from '@/app/_shared/words/entry-words';
import type { KitRow } from '@/db/queries/kits';
import type { LineFacts } from '@/lib/outlook/shop-facts';
import styles from './crib.module.css';

interface KitsOutProps {
  readonly kits: readonly KitRow[];
  readonly lines: readonly LineFacts[];
  readonly names: Names;
  readonly today: string;
}

/** Kits that are out, those with something missing or past their day first: whose, where, how much is back. */
export function KitsOut({ kits, lines, names, today }: KitsOutProps) {
  if (kits.length === 0)
    return (
      <EmptyState title="No kit is out">What is issued as a kit stands here until it is back.</EmptyState>
    );
  const dueOnDay = new Map(lines.map((line) => [line.id, line.dueOnDay]));
  const size = new Map(lines.map((line) => [line.id, names.connection(line.connectionId)]));
  const late = (kit: KitRow) => (dueOnDay.get(kit.jobLineId) ?? '0000-00-00') < today;
  const rank = (kit: KitRow) => (kit.missingToolIds.length > 0 ? 0 : late(kit) ? 1 : 2);
  const ordered = [...kits].sort((a, b) => rank(a) - rank(b) || a.issuedAtMs - b.issuedAtMs);
  return (
    <ul className={styles.kits}>
      {ordered.map((kit) => {
        const out = kit.itemsNow.filter((item) => item.out).map(({ tool }) => tool.id);
        return (
          <li key={kit.id}>
            <h3>
              <Link href={`/crib/kits/${encodeURIComponent(kit.id)}` as Route} prefetch={false}>
                {[kit.jobLineId, size.get(kit.jobLineId)].filter(Boolean).join(', ')}
              </Link>
            </h3>
            <p>
              {names.person(kit.toPersonId)}
              {kit.bench === '' ? '' : ` at ${kit.bench}`}: {out.length} of {count(kit.items.length, 'item')}{' '}
              out
            </p>
            {kit.missingToolIds.length > 0 ? (
              <p>
                <b>Missing: {listWords(kit.missingToolIds)}</b>
                {kit.lastSeen === '' ? '' : `, last seen ${kit.lastSeen}`}
              </p>
            ) : null}
            {late(kit) ? (
              <p>
                <b>Overdue.</b>{' '}
                <span className="quiet">
                  {dueOnDay.has(kit.jobLineId)
                    ? `The line was due ${dayText(dueOnDay.get(kit.jobLineId) ?? today, today)}.`
                    : 'Its job is closed.'}
                </span>
              </p>
            ) : null}
          </li>
        );
      })}
    </ul>
  );
}
