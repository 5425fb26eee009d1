import type { Metadata } from 'next';
import { shopOutlook } from '@/app/_server/outlook';
import { Breadcrumb, ButtonLink, EmptyState, Panel, TitleBlock } from '@/app/_shared/ui';
import { JustDone } from '@/app/plan/_parts/just-done';
import { shopDb } from '@/db/client';
import { listOpenOrders } from '@/db/queries/orders';
import { OrderTable } from './_parts/order-table';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Orders' };

/** What is on order: the day promised, the day expected now, and the way to slip or receive it. */
export default async function OrdersPage({ searchParams }: PageProps<'/plan/orders'>) {
  const { today, parts } = shopOutlook().facts;
  const orders = listOpenOrders(shopDb());
  const late = orders.filter(({ expectedOnDay }) => expectedOnDay < today).length;
  const { entry, placed } = await searchParams;
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here="Orders" />
      <TitleBlock
        title="Orders"
        lead="What is on its way. An order counts for the plan from the day after it is expected, the receiving check included."
        cells={[
          { label: 'Open', value: orders.length },
          { label: 'Overdue', value: late === 0 ? 'none' : late },
        ]}
        actions={
          <ButtonLink href="/plan/orders/new" tone="primary">
            Write down an order
          </ButtonLink>
        }
      />
      <JustDone entryId={entry}>Order {placed} is written down. The plan counts on it.</JustDone>
      <Panel title="Open orders">
        {orders.length === 0 ? (
          <EmptyState title="Nothing is on order">
            Write an order down when it is placed; lines that wait for it then show a date.
          </EmptyState>
        ) : (
          <OrderTable orders={orders} parts={parts} today={today} />
        )}
      </Panel>
    </div>
  );
}
