import type { Route } from 'next';
import Link from 'next/link';
import { count, dayText } from '@/app/_shared/format';
import { Panel, Table } from '@/app/_shared/ui';
import type { OrderRow } from '@/db/queries/orders';
import { daysBetween } from '@/lib/calendar/day';
import type { Part } from '@/lib/shop/part';

interface ClosedProps {
  readonly orders: readonly OrderRow[];
  readonly parts: readonly Part[];
  readonly today: string;
}

/** Orders that are done with, the last first: promised and achieved, as the suppliers are judged by. */
export function ClosedOrders({ orders, parts, today }: ClosedProps) {
  if (orders.length === 0) return null;
  const name = (partId: string) => parts.find(({ id }) => id === partId)?.name ?? partId;
  return (
    <Panel title="Earlier orders" aside={count(orders.length, 'order')}>
      <details>
        <summary>Show them, the last first</summary>
        <Table
          caption="Orders received in full or cancelled"
          rows={orders}
          rowKey={({ id }) => id}
          columns={[
            {
              key: 'order',
              header: 'Order',
              lead: true,
              cell: ({ id }) => (
                <Link
                  href={`/plan/orders/${encodeURIComponent(id)}` as Route}
                  prefetch={false}
                  className="id"
                >
                  {id}
                </Link>
              ),
            },
            { key: 'what', header: 'What', cell: ({ quantity, partId }) => `${quantity} × ${name(partId)}` },
            { key: 'placed', header: 'Placed', cell: ({ placedOnDay }) => dayText(placedOnDay, today) },
            {
              key: 'promised',
              header: 'Promised',
              cell: ({ promisedOnDay }) => dayText(promisedOnDay, today),
            },
            { key: 'came', header: 'All there', cell: (order) => cameWords(order, today) },
          ]}
        />
      </details>
    </Panel>
  );
}

function cameWords({ status, receivedOnDay, promisedOnDay }: OrderRow, today: string): string {
  if (status === 'cancelled' || receivedOnDay === null) return 'cancelled';
  const late = daysBetween(promisedOnDay, receivedOnDay);
  const how = late === 0 ? 'as promised' : `${count(Math.abs(late), 'day')} ${late > 0 ? 'late' : 'early'}`;
  return `${dayText(receivedOnDay, today)}, ${how}`;
}
