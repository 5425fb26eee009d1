import type { Route } from 'next';
import Link from 'next/link';
import { newStamp } from '@/app/_server/entry-stamp';
import { chanceWords, dayText, dueText, inDays } from '@/app/_shared/format';
import { HandText, Table } from '@/app/_shared/ui';
import type { ChasedOrder, ChaseReason } from '@/lib/orders/chase-list';
import type { OrderFacts } from '@/lib/outlook/shop-facts';
import type { Part } from '@/lib/shop/part';
import { CancelForm, ChaseForm, SlipForm } from './order-forms';
import styles from './orders.module.css';
import { slipWords } from './slip-words';

interface OrderTableProps {
  readonly orders: readonly ChasedOrder[];
  readonly today: string;
}

const REASON: Record<ChaseReason, string> = {
  late: '▲ ask: it is late',
  'line-waits': '▲ ask: a line waits for it',
  'due-soon': '◆ ask: due soon, not confirmed',
};

/** The open orders, those to ask after first. The promised day stays visible however often it slips. */
export function OrderTable({ orders, today }: OrderTableProps) {
  return (
    <Table
      caption="Open orders, those to ask after first"
      rows={orders}
      rowKey={({ order }) => order.id}
      columns={[
        {
          key: 'order',
          header: 'Order',
          lead: true,
          cell: ({ order, reason }) => (
            <span className="stack-tight" id={order.id}>
              <Link
                href={`/plan/orders/${encodeURIComponent(order.id)}` as Route}
                prefetch={false}
                className="id"
              >
                {order.id}
              </Link>
              {reason === null ? null : <span className="fine">{REASON[reason]}</span>}
            </span>
          ),
        },
        {
          key: 'part',
          header: 'What',
          cell: ({ part, supplier }) => <PartText part={part} supplier={supplier} />,
        },
        {
          key: 'quantity',
          header: 'To come',
          cell: ({ order }) => <span className="num">{outstanding(order)}</span>,
        },
        {
          key: 'expected',
          header: 'Expected',
          cell: (row) => <Expected row={row} today={today} />,
        },
        { key: 'do', header: 'What happened', cell: ({ order }) => <Deeds order={order} /> },
      ]}
    />
  );
}

function Expected({ row, today }: { readonly row: ChasedOrder; readonly today: string }) {
  const { order, usable, waiting } = row;
  const { expectedOnDay, promisedOnDay = expectedOnDay } = order;
  return (
    <div className="stack-tight">
      <b>{expectedOnDay < today ? dueText(expectedOnDay, today) : inDays(expectedOnDay, today)}</b>
      <span className="quiet">{slipWords({ promisedOnDay, expectedOnDay }, today)}</span>
      {usable === null ? null : (
        <span className="fine">
          usable {dayText(usable.early, today)} to {dayText(usable.late, today)}, four times in five
        </span>
      )}
      {waiting.map(({ lineId, probability, onDay }) => (
        <span key={lineId} className="fine">
          <Link href={`/plan/lines/${encodeURIComponent(lineId)}` as Route} prefetch={false}>
            {lineId}
          </Link>{' '}
          waits for it: {chanceWords(probability)} that it stops
          {onDay === null ? '' : `, about ${dayText(onDay, today)}`}
        </span>
      ))}
    </div>
  );
}

function Deeds({ order }: { readonly order: OrderFacts }) {
  const { id, expectedOnDay } = order;
  return (
    <div className={`stack-tight no-print ${styles.deeds}`}>
      <Link href={`/tools/receive?order=${encodeURIComponent(id)}` as Route} prefetch={false}>
        It came: receive it
      </Link>
      <details>
        <summary>I asked after it</summary>
        <ChaseForm orderId={id} stamp={newStamp()} />
      </details>
      <details>
        <summary>It slipped</summary>
        <Link href={`/plan/what-if?orderId=${encodeURIComponent(id)}` as Route} prefetch={false}>
          What if it slips: try it on the plan first
        </Link>
        <SlipForm orderId={id} expectedOnDay={expectedOnDay} stamp={newStamp()} />
      </details>
      <details>
        <summary>It will not come</summary>
        <CancelForm orderId={id} stamp={newStamp()} words="Cancel what is still to come" />
      </details>
    </div>
  );
}

function PartText({ part, supplier }: { readonly part: Part; readonly supplier: string }) {
  return (
    <div className="stack-tight">
      <span>{part.name}</span>
      {part.designation === '' ? null : <span className="quiet">{part.designation}</span>}
      {part.hand === null ? null : <HandText hand={part.hand} />}
      {supplier === '' ? null : <span className="fine">{supplier}</span>}
    </div>
  );
}

function outstanding({ quantity, receivedQuantity, placedOnDay }: OrderFacts): string {
  const open = quantity - receivedQuantity;
  if (receivedQuantity === 0) return String(open);
  return `${open} of ${quantity}${placedOnDay === undefined ? '' : `, since ${dayText(placedOnDay)}`}`;
}
