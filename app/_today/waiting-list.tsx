import type { Route } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { count, dayText, listWords } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import type { Db } from '@/db/open';
import { listOpenConflicts } from '@/db/queries/conflicts';
import { listOpenFindings } from '@/db/queries/gauge-looks';
import { listKits } from '@/db/queries/kits';
import { listPiecesOwed } from '@/db/queries/pieces-owed';
import { listRecalls } from '@/db/queries/recalls';
import { suspectEndsLeft } from '@/lib/ledger/recall-history';
import { type LateKit, lateKits } from '@/lib/outlook/late-kits';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import styles from './today.module.css';

interface Waiting {
  readonly key: string;
  readonly href: string;
  readonly said: string;
  readonly more: ReactNode;
}

/** What was begun and waits for somebody: pieces missing, ends in doubt, entries not taken, kits not back. Nothing at all when there is none. */
export function WaitingList({ db, facts }: { readonly db: Db; readonly facts: ShopFacts }) {
  const all = [...piecesOwed(db), ...recallsOpen(db), ...conflictsOpen(db), ...kitsLate(db, facts)];
  if (all.length === 0) return null;
  return (
    <Panel title="Begun and not finished">
      <ul className={styles.waiting}>
        {all.map(({ key, href, said, more }) => (
          <li key={key}>
            <Link href={href as Route} prefetch={false}>
              {said}
            </Link>
            <span className="quiet">{more}</span>
          </li>
        ))}
      </ul>
    </Panel>
  );
}

function piecesOwed(db: Db): Waiting[] {
  return listPiecesOwed(db).map((toolId) => ({
    key: toolId,
    href: `/tools/${encodeURIComponent(toolId)}`,
    said: `Pieces of ${toolId}`,
    more: 'to be found before the tube or the bench is released',
  }));
}

function recallsOpen(db: Db): Waiting[] {
  const found = listOpenFindings(db).map(({ gaugeId, entryId }) => ({
    key: entryId,
    href: `/recalls/new?${new URLSearchParams({ gauge: gaugeId, entry: entryId })}`,
    said: `${gaugeId} was found out`,
    more: 'the ends it accepted are not listed yet',
  }));
  const open = listRecalls(db)
    .filter(({ status }) => status === 'open')
    .map((recall) => {
      const left = suspectEndsLeft(recall);
      return {
        key: recall.id,
        href: `/recalls/${encodeURIComponent(recall.id)}`,
        said: `Recall of ${recall.gaugeId}`,
        more: left === 0 ? 'all decided: close it' : `${count(left, 'end')} to decide about`,
      };
    });
  return [...found, ...open];
}

function conflictsOpen(db: Db): Waiting[] {
  const open = listOpenConflicts(db).length;
  if (open === 0) return [];
  const more = 'entered without network and not taken by the record';
  return [
    {
      key: 'conflicts',
      href: '/bench/conflicts',
      said: `${count(open, 'entry', 'entries')} to settle`,
      more,
    },
  ];
}

function kitsLate(db: Db, facts: ShopFacts): Waiting[] {
  return lateKits(listKits(db), facts).map((late) => ({
    key: late.kitId,
    href: `/crib/kits/${encodeURIComponent(late.kitId)}`,
    said: `Kit for ${late.jobLineId}`,
    more: lateWords(late, facts.today),
  }));
}

function lateWords({ missingToolIds, dueOnDay }: LateKit, today: string): string {
  if (missingToolIds.length > 0) return `missing: ${listWords(missingToolIds)}`;
  return dueOnDay === null
    ? 'still out, and its job is closed'
    : `still out; its line was due ${dayText(dueOnDay, today)}`;
}
