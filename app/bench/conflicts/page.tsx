import type { Metadata } from 'next';
import Link from 'next/link';
import { timeZone, today } from '@/app/_server/clock';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopNames } from '@/app/_server/names';
import { momentText } from '@/app/_shared/format';
import { Breadcrumb, EmptyState, Panel, TitleBlock, ToolId } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { type ConflictRow, listConflicts } from '@/db/queries/conflicts';
import { SettleForm } from './_parts/settle-form';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'To settle' };

/** What benches entered without network and the record could not take: each with its reason, settled by a person. */
export default function ConflictsPage() {
  const all = listConflicts(shopDb());
  const open = all.filter(({ settled }) => settled === null).reverse();
  const names = shopNames();
  const said = (row: ConflictRow) =>
    `${names.person(row.raisedById)}, ${momentText(row.raisedAtMs, timeZone(), today())}`;
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/bench', label: 'Bench' }]} here="To settle" />
      <TitleBlock
        title="To settle"
        lead="Entered at a bench without network, and not taken by the record. Nothing of it is lost, nothing is counted yet."
        cells={[{ label: 'Open', value: open.length }]}
      />
      {open.length === 0 ? (
        <Panel>
          <EmptyState title="Nothing to settle">Everything that benches entered is in the record.</EmptyState>
        </Panel>
      ) : null}
      {open.map((row) => (
        <Panel
          key={row.id}
          title={row.what}
          aside={
            row.toolId === '' ? null : (
              <Link href={`/tools/${encodeURIComponent(row.toolId)}`}>
                <ToolId id={row.toolId} />
              </Link>
            )
          }
        >
          <div className="stack">
            <p>{row.sentence}</p>
            <p className="fine">{said(row)}</p>
            <SettleForm conflictId={row.id} stamp={newStamp()} />
          </div>
        </Panel>
      ))}
      <Settled rows={all.filter(({ settled }) => settled !== null)} said={said} />
    </div>
  );
}

function Settled({ rows, said }: { rows: readonly ConflictRow[]; said: (row: ConflictRow) => string }) {
  if (rows.length === 0) return null;
  return (
    <Panel title="Settled">
      <ul>
        {rows.map((row) => (
          <li key={row.id}>
            {row.what}: {row.settled === 'entered' ? 'entered by hand' : 'dropped'}, {row.note}{' '}
            <span className="fine">({said(row)})</span>
          </li>
        ))}
      </ul>
    </Panel>
  );
}
