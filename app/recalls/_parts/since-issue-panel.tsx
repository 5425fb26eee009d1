import Link from 'next/link';
import { dayAt } from '@/app/_server/clock';
import { count, dayText } from '@/app/_shared/format';
import { Panel, Table } from '@/app/_shared/ui';
import type { endsSinceIssue } from '@/db/queries/ends-since-issue';

interface SinceIssueProps {
  readonly toolId: string;
  readonly role: string;
  readonly since: ReturnType<typeof endsSinceIssue>;
  readonly sizeName: (connectionId: string) => string;
  readonly today: string;
}

/** What a die or blade has cut since it was issued: each of these ends is gauged again, threads with the ring of their hand. */
export function SinceIssuePanel({ toolId, role, since, sizeName, today }: SinceIssueProps) {
  const when =
    since.issuedAtMs === null
      ? 'ever: it was never issued'
      : `since ${dayText(dayAt(since.issuedAtMs), today)}, when it was issued`;
  return (
    <Panel title={`Cut with ${toolId}`} aside={when}>
      <p>
        Wrong {role} used? Set it aside on <Link href={`/tools/${encodeURIComponent(toolId)}`}>its page</Link>
        , and gauge each of these ends again
        {role === 'threading die' ? ' with the ring of the right hand' : ''}.
      </p>
      <Table
        caption={`Ends cut with ${toolId}, line by line`}
        rows={since.lines}
        rowKey={({ jobLineId, heat, connectionId }) => `${jobLineId} ${connectionId} ${heat}`}
        empty={<p className="quiet">Nothing is logged for it in that time.</p>}
        columns={[
          {
            key: 'line',
            header: 'Line',
            lead: true,
            cell: ({ jobLineId }) =>
              jobLineId === null ? (
                'no job'
              ) : (
                <Link href={`/accept/${encodeURIComponent(jobLineId)}`} prefetch={false}>
                  {jobLineId}
                </Link>
              ),
          },
          { key: 'size', header: 'Size', cell: ({ connectionId }) => sizeName(connectionId) },
          { key: 'heat', header: 'Heat', cell: ({ heat }) => heat || 'not written' },
          { key: 'cut', header: 'Cut', cell: ({ cutEnds }) => count(cutEnds, 'end') },
          { key: 'accepted', header: 'Accepted', cell: ({ acceptedEnds }) => count(acceptedEnds, 'end') },
        ]}
      />
    </Panel>
  );
}
