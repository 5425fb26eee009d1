import { count, share, whole } from '@/app/_shared/format';
import { EmptyState, Panel, Table } from '@/app/_shared/ui';
import type { SupplierRecord } from '@/lib/lead-time/supplier-record';

/** What suppliers promised and what they achieved: what the order-by days are counted with. */
export function SupplierPanel({ records }: { readonly records: readonly SupplierRecord[] }) {
  return (
    <Panel title="Suppliers: promised and achieved" aside="from orders that came in full">
      <Table
        caption="Lead times by supplier"
        rows={records}
        rowKey={({ supplier }) => supplier}
        empty={
          <EmptyState title="No order has come in full yet">
            Until then a supplier is taken at its word, give or take a factor of 1.5.
          </EmptyState>
        }
        columns={[
          {
            key: 'supplier',
            header: 'Supplier',
            lead: true,
            cell: ({ supplier }) => supplier || 'not named',
          },
          { key: 'orders', header: 'Orders', numeric: true, cell: ({ orders }) => orders },
          { key: 'on-time', header: 'On time', numeric: true, cell: (row) => share(row.onTime, row.orders) },
          {
            key: 'promised',
            header: 'Promised, days',
            numeric: true,
            cell: (row) => whole(row.quotedDaysMean),
          },
          {
            key: 'achieved',
            header: 'Achieved, days',
            numeric: true,
            cell: (row) => whole(row.achievedDaysMean),
          },
          {
            key: 'worst',
            header: 'Latest',
            numeric: true,
            cell: ({ lateDaysWorst }) => lateWords(lateDaysWorst),
          },
          {
            key: 'expect',
            header: 'Promised 10 days, expect',
            cell: ({ per10Days: { median, nineInTen } }) =>
              `about ${whole(median)}; 9 in 10 within ${whole(Math.ceil(nineInTen))}`,
          },
        ]}
      />
    </Panel>
  );
}

function lateWords(days: number): string {
  if (days <= 0) return 'never late';
  return `${count(days, 'day')} late`;
}
