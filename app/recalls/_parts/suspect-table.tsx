import Link from 'next/link';
import { count, dayText, listWords } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui';
import type { SuspectRow } from '@/db/queries/recall-sheet';
import { DISPOSITION_LABEL } from '@/lib/shop/recall';

interface SuspectTableProps {
  readonly rows: readonly SuspectRow[];
  readonly caption: string;
  readonly personName: (id: string) => string;
}

/** The suspect ends, look by look: which, where they are, who gauged them, and what was decided. */
export function SuspectTable({ rows, caption, personName }: SuspectTableProps) {
  return (
    <Table
      caption={caption}
      rows={rows}
      rowKey={({ acceptanceId }) => acceptanceId}
      columns={[
        { key: 'ends', header: 'Ends', lead: true, cell: (row) => <Ends row={row} /> },
        { key: 'heat', header: 'Heat', cell: ({ look }) => look?.heat || 'not written' },
        {
          key: 'gauged',
          header: 'Gauged',
          cell: ({ look }) =>
            look === undefined ? 'taken back' : `${dayText(look.gaugedOnDay)}, ${personName(look.personId)}`,
        },
        {
          key: 'where',
          header: 'Where',
          cell: ({ shippedOnDay }) =>
            shippedOnDay === null ? 'in house' : `shipped ${dayText(shippedOnDay)}`,
        },
        {
          key: 'checked',
          header: 'Checked independently',
          cell: ({ independentlyChecked }) => (independentlyChecked ? 'yes' : 'no'),
        },
        { key: 'decided', header: 'Decided', cell: (row) => decided(row) },
      ]}
    />
  );
}

function Ends({ row }: { readonly row: SuspectRow }) {
  const { look, endCount } = row;
  if (look?.jobLineId == null) return <>{endsWords(row)}</>;
  return (
    <>
      {endsWords(row)} of{' '}
      <Link href={`/accept/${encodeURIComponent(look.jobLineId)}`} prefetch={false}>
        <span className="num">{look.jobLineId}</span>
      </Link>
      {endCount === look.endCount ? null : <span className="fine"> (of {look.endCount})</span>}
    </>
  );
}

/** Which ends they are, by mark or by number on the line. */
export function endsWords({ look, endCount }: Pick<SuspectRow, 'look' | 'endCount'>): string {
  if (look === undefined || look.endCount !== endCount) return count(endCount, 'end');
  if (look.endMarks.length > 0) return look.endMarks.join(', ');
  if (look.firstEndNo === null) return count(endCount, 'end');
  return endCount === 1
    ? `end ${look.firstEndNo}`
    : `ends ${look.firstEndNo} to ${look.firstEndNo + endCount - 1}`;
}

function decided({ open, disposals }: SuspectRow): string {
  const words = disposals.map(
    ({ how, endCount, gaugeId }) =>
      `${endCount} ${DISPOSITION_LABEL[how]}${gaugeId === null ? '' : ` with ${gaugeId}`}`,
  );
  return listWords(open > 0 ? [...words, `${open} open`] : words);
}
