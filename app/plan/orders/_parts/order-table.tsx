import type { Route } from 'next';
import Link from 'next/link';
import { newStamp } from '@/app/_server/entry-stamp';
import { dayText, dueText, inDays } from '@/app/_shared/format';
import { HandText, Table } from '@/app/_shared/ui';
import type { OrderRow } from '@/db/queries/orders';
import type { Part } from '@/lib/shop/part';
import { SlipForm } from './slip-form';
import { slipWords } from './slip-words';

interface OrderTableProps {
  readonly orders: readonly OrderRow[];
  readonly parts: readonly Part[];
  readonly today: string;
}

/** The open orders, the next to come first. The promised day stays visible however often it slips. */
export function OrderTable({ orders, parts, today }: OrderTableProps) {
  const byId = new Map(parts.map((part) => [part.id, part]));
  return (
    <Table
      caption="Open orders, the next to come first"
      rows={orders}
      rowKey={(order) => order.id}
      columns={[
        {
          key: 'order',
          header: 'Order',
          lead: true,
          cell: (order) => (
            <span className="id" id={order.id}>
              {order.id}
            </span>
          ),
        },
        {
          key: 'part',
          header: 'What',
          cell: (order) => <PartText part={byId.get(order.partId)} id={order.partId} />,
        },
        {
          key: 'quantity',
          header: 'To come',
          cell: (order) => <span className="num">{outstanding(order)}</span>,
        },
        {
          key: 'expected',
          header: 'Expected',
          cell: (order) => (
            <div className="stack-tight">
              <b>
                {order.expectedOnDay < today
                  ? dueText(order.expectedOnDay, today)
                  : inDays(order.expectedOnDay, today)}
              </b>
              <span className="quiet">{slipWords(order, today)}</span>
            </div>
          ),
        },
        {
          key: 'do',
          header: 'What happened',
          cell: (order) => (
            <div className="stack-tight no-print">
              <Link href={`/tools/receive?order=${encodeURIComponent(order.id)}` as Route} prefetch={false}>
                It came: receive it
              </Link>
              <details>
                <summary>It slipped</summary>
                <SlipForm orderId={order.id} expectedOnDay={order.expectedOnDay} stamp={newStamp()} />
              </details>
            </div>
          ),
        },
      ]}
    />
  );
}

function PartText({ part, id }: { readonly part: Part | undefined; readonly id: string }) {
  if (part === undefined) return id;
  return (
    <div className="stack-tight">
      <span>{part.name}</span>
      {part.designation === '' ? null : <span className="quiet">{part.designation}</span>}
      {part.hand === null ? null : <HandText hand={part.hand} />}
      {part.supplier === '' ? null : <span className="fine">{part.supplier}</span>}
    </div>
  );
}

function outstanding({ quantity, receivedQuantity, placedOnDay }: OrderRow): string {
  const open = quantity - receivedQuantity;
  return receivedQuantity === 0 ? String(open) : `${open} of ${quantity}, since ${dayText(placedOnDay)}`;
}
