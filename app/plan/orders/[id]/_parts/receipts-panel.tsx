import type { Route } from 'next';
import Link from 'next/link';
import { dayText } from '@/app/_shared/format';
import { Panel, Table } from '@/app/_shared/ui';
import type { OrderReceipt } from '@/db/queries/order-receipts';

interface ReceiptsProps {
  readonly receipts: readonly OrderReceipt[];
  readonly today: string;
}

/** What came on the order, piece by piece: a piece set aside at the door does not count for it. */
export function ReceiptsPanel({ receipts, today }: ReceiptsProps) {
  if (receipts.length === 0) return null;
  return (
    <Panel title="What came on it">
      <Table
        caption="Pieces that came on this order"
        rows={receipts}
        rowKey={({ toolId }) => toolId}
        columns={[
          {
            key: 'tool',
            header: 'Tool',
            lead: true,
            cell: ({ toolId }) => (
              <Link href={`/tools/${encodeURIComponent(toolId)}` as Route} prefetch={false} className="id">
                {toolId}
              </Link>
            ),
          },
          { key: 'day', header: 'Came', cell: ({ onDay }) => dayText(onDay, today) },
          { key: 'lot', header: 'Lot', cell: ({ lot }) => lot || 'not marked' },
          {
            key: 'where',
            header: 'At the door',
            cell: ({ quarantine }) =>
              quarantine === null
                ? 'taken in'
                : `▲ into quarantine. ${quarantine} Does not count for the order.`,
          },
        ]}
      />
    </Panel>
  );
}
