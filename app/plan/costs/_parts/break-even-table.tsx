import { estimatedMoney } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui';
import type { RuleCost } from '@/lib/end-costs/rule-costs';
import type { UsualChange } from '@/lib/end-costs/rule-counts';
import { breakEvenWords, workWords } from './rule-words';

interface BreakEvenProps {
  readonly rows: readonly RuleCost[];
  readonly nameOf: (partId: string) => string;
  readonly currency: string;
}

/** By part the chance to finish below which the estimate changes an edge first, and the two amounts behind it. */
export function BreakEvenTable({ rows, nameOf, currency }: BreakEvenProps) {
  const asked = rows.flatMap(({ partId, usual }) => (usual === null ? [] : [{ partId, usual }]));
  if (asked.length === 0) return null;
  return (
    <details>
      <summary>When the estimate changes an edge first</summary>
      <p>
        A change too early throws away the life that the next work would have used. A change too late costs
        the time lost and a spoilt end, less a planned change. An edge goes on as long as its chance to finish
        the next work is worth that: the dearer an edge is by the end, the poorer the odds at which it is
        still cheaper to let it cut.
      </p>
      <Table
        caption="The chance to finish below which an edge is changed first, by part"
        rows={asked}
        rowKey={({ partId }) => partId}
        columns={[
          { key: 'part', header: 'Part', lead: true, cell: ({ partId }) => nameOf(partId) },
          { key: 'work', header: 'The next work takes', cell: ({ usual }) => workWords(usual, currency) },
          {
            key: 'extra',
            header: 'A failure costs more by',
            numeric: true,
            cell: ({ usual }: { usual: UsualChange }) => estimatedMoney(usual.extraMinor, currency),
          },
          {
            key: 'below',
            header: 'Changed first below',
            cell: ({ usual }: { usual: UsualChange }) => breakEvenWords(usual),
          },
        ]}
      />
    </details>
  );
}
