import { chanceWords, count, momentText } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui';
import type { Prediction } from '@/lib/score/prediction';

interface SaidTableProps {
  readonly said: readonly Prediction[];
  readonly timeZone: string;
}

/** What was said at each issue, and what came of it. */
export function SaidTable({ said, timeZone }: SaidTableProps) {
  return (
    <Table
      caption="What was said at each issue, and what came of it"
      rows={said}
      rowKey={({ id }) => id}
      columns={[
        {
          key: 'when',
          header: 'When',
          lead: true,
          cell: ({ madeAtMs }) => <span className="num">{momentText(madeAtMs, timeZone)}</span>,
        },
        { key: 'for', header: 'For', cell: ({ what }) => what.lineId ?? 'no job' },
        {
          key: 'said',
          header: 'Said',
          cell: ({ what, probability, band }) =>
            `${count(what.ends ?? 0, 'end')}: ${chanceWords(probability)}${band ? `; good for ${band.low} to ${band.high}` : ''}`,
        },
        { key: 'came', header: 'Came of it', cell: cameOf },
      ]}
    />
  );
}

function cameOf({ settled }: Prediction): string {
  if (settled === null) return 'not yet known';
  const lasted = settled.lasted;
  const ends = lasted === undefined ? '' : `, ${lasted.exact ? '' : 'at least '}${count(lasted.ends, 'end')}`;
  switch (settled.reason) {
    case 'cut-them':
      return `it cut them${ends}`;
    case 'wore-out-before':
      return `it wore out before${ends}`;
    case 'incident':
      return 'an incident came first: says nothing of wear';
    case 'lost':
      return 'lost: says nothing of wear';
    case 'other-work':
      return 'put to other work before: says nothing';
    default:
      return 'came back good with fewer cut: says nothing';
  }
}
