import type { Metadata } from 'next';
import Link from 'next/link';
import { shopFacts } from '@/app/_server/outlook';
import { count, inDays } from '@/app/_shared/format';
import { ButtonLink, EmptyState, Panel, Table, TitleBlock } from '@/app/_shared/ui';
import { SizeWords } from '@/app/plan/_parts/size-drawing';
import { shopDb } from '@/db/client';
import { linesWithHeldEnds } from '@/db/queries/held-ends';
import { releasableNow } from '@/lib/outlook/release-standing';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Accept ends' };

/** Lines whose ends can be accepted now, and lines with ends that cannot be released as they are. */
export default function AcceptIndexPage() {
  const { lines, connections, today } = shopFacts();
  const held = linesWithHeldEnds(shopDb());
  const cutting = lines.filter(({ operations }) => operations.some((one) => one !== 'assemble'));
  const sizeOf = (id: string) => connections.find((connection) => connection.id === id);
  return (
    <div className="page">
      <TitleBlock
        title="Accept ends"
        lead="Choose the line in hand. An end without a recorded gauge is accepted as seen, and is not releasable."
      />
      {held.length === 0 ? null : (
        <Panel title="Not releasable">
          <ul className="stack">
            {held.map(({ jobLineId, ends }) => (
              <li key={jobLineId}>
                <Link href={`/accept/${encodeURIComponent(jobLineId)}`}>{jobLineId}</Link>:{' '}
                {count(ends, 'end')}
              </li>
            ))}
          </ul>
        </Panel>
      )}
      <Panel title="Lines on the plan">
        <Table
          caption="Lines on the plan, in start order"
          rows={cutting}
          rowKey={({ id }) => id}
          empty={
            <EmptyState
              title="No line is on the plan"
              action={<ButtonLink href="/plan/jobs/new">Enter a job</ButtonLink>}
            >
              Ends are accepted line by line.
            </EmptyState>
          }
          columns={[
            {
              key: 'line',
              header: 'Line',
              lead: true,
              cell: (line) => (
                <Link href={`/accept/${encodeURIComponent(line.id)}`} prefetch={false}>
                  {line.id}
                </Link>
              ),
            },
            {
              key: 'size',
              header: 'Size',
              cell: (line) => (
                <SizeWords connection={sizeOf(line.connectionId)} connectionId={line.connectionId} />
              ),
            },
            {
              key: 'accepted',
              header: 'Accepted',
              numeric: true,
              cell: (line) => `${line.acceptedEnds ?? 0} of ${line.ends}`,
            },
            {
              key: 'releasable',
              header: 'Releasable',
              numeric: true,
              cell: (line) => releasableNow(line),
            },
            { key: 'due', header: 'Due', cell: (line) => inDays(line.dueOnDay, today) },
          ]}
        />
      </Panel>
    </div>
  );
}
