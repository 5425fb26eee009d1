import Link from 'next/link';
import { count, dayText } from '@/app/_shared/format';
import { Panel, Table } from '@/app/_shared/ui';
import type { Names } from '@/app/_shared/words/entry-words';
import type { EndHit, FoundEnds } from '@/db/queries/find-ends';
import { endAddress } from './end-address';

const FOUND_BY: Record<EndHit['found'], string> = {
  mark: 'by their marks',
  number: 'by number',
  line: 'on that line or job',
  heat: 'of that heat',
  gauge: 'gauged with it',
  edge: 'cut with it',
  fluid: 'cut with that bottle',
};

interface HitListProps {
  readonly found: FoundEnds;
  readonly names: Names;
  readonly today: string;
}

/** Several ends answer: which one is meant? */
export function HitList({ found: { hits, more }, names, today }: HitListProps) {
  const by = hits[0]?.found ?? 'mark';
  return (
    <Panel title="Which one?" aside={FOUND_BY[by]}>
      <Table
        caption="Ends that were found, the latest first"
        rows={hits}
        rowKey={({ acceptanceId, mark, endNo }) => `${acceptanceId} ${mark ?? endNo}`}
        columns={[
          {
            key: 'end',
            header: 'End',
            lead: true,
            cell: (hit) => (
              <Link href={endAddress(hit)} prefetch={false}>
                {endWords(hit)}
              </Link>
            ),
          },
          { key: 'line', header: 'Line', cell: ({ jobLineId }) => jobLineId ?? 'no job' },
          { key: 'size', header: 'Size', cell: ({ connectionId }) => names.connection(connectionId) },
          { key: 'heat', header: 'Heat', cell: ({ heat }) => (heat === '' ? 'not written down' : heat) },
          { key: 'day', header: 'Gauged', cell: ({ gaugedOnDay }) => dayText(gaugedOnDay, today) },
          { key: 'decision', header: 'Result', cell: ({ decision }) => decision },
        ]}
      />
      {more > 0 ? (
        <p className="quiet">{more} more before these: add the number of the end to the line.</p>
      ) : null}
    </Panel>
  );
}

function endWords({ mark, endNo, endCount }: EndHit): string {
  if (mark !== null) return mark;
  if (endNo === null) return `${count(endCount, 'end')} without a number`;
  return endCount === 1 ? `end ${endNo}` : `ends ${endNo} to ${endNo + endCount - 1}`;
}
