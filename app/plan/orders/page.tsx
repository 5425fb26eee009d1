import type { Metadata } from 'next';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { Breadcrumb, ButtonLink, EmptyState, Panel, TitleBlock } from '@/app/_shared/ui';
import { JustDone } from '@/app/plan/_parts/just-done';
import { listClosedOrders, listDrafts } from '@/db/queries/orders';
import { supplierRecords } from '@/lib/lead-time/supplier-record';
import { chaseList } from '@/lib/orders/chase-list';
import { orderBook } from '@/lib/orders/order-lines';
import { ClosedOrders } from './_parts/closed-orders';
import { DraftsPanel } from './_parts/drafts-panel';
import { horizonOf } from './_parts/horizon';
import { HorizonChoice } from './_parts/horizon-choice';
import { OrderTable } from './_parts/order-table';
import { RegroundPanel } from './_parts/reground-panel';
import { SupplierPanel } from './_parts/supplier-panel';
import { ToOrderPanel } from './_parts/to-order-panel';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Orders' };

/** The week's ordering on one page: what to order, what waits for a yes, what to ask after, who keeps its word. */
export default async function OrdersPage({ searchParams }: PageProps<'/plan/orders'>) {
  const { outlook, db, asOfMs } = await shopView();
  const { facts } = outlook;
  const { entry, placed, weeks } = await searchParams;
  const book = orderBook(outlook, horizonOf(weeks));
  const [open, drafts] = [chaseList(facts, outlook.ensemble), listDrafts(db)];
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here="Orders" />
      <TitleBlock
        title="Orders"
        lead="How many of what, by when and why, with the lead times that suppliers achieved."
        cells={[
          { label: 'To order', value: book.toOrder.length || 'nothing' },
          { label: 'Drafts', value: drafts.length || 'none' },
          { label: 'On order', value: open.length || 'none' },
          { label: 'To ask after', value: open.filter(({ reason }) => reason !== null).length || 'none' },
        ]}
        actions={<ButtonLink href="/plan/orders/new">Write down an order</ButtonLink>}
      />
      <JustDone entryId={entry}>Order {placed} is written down. The plan counts on it.</JustDone>
      <HorizonChoice horizonDays={book.horizonDays} path="/plan/orders" />
      <ToOrderPanel book={book} outlook={outlook} horizonQuery={String(book.horizonDays / 7)} />
      <RegroundPanel covered={book.covered} today={facts.today} />
      {drafts.length === 0 ? null : <DraftsPanel drafts={drafts} facts={facts} />}
      <Panel title="On order" aside={<a href="/export/orders.csv">all orders as a CSV file</a>}>
        {open.length === 0 ? (
          <EmptyState title="Nothing is on order">
            Write an order down when it is placed; lines that wait for it then show a date.
          </EmptyState>
        ) : (
          <OrderTable orders={open} today={facts.today} />
        )}
      </Panel>
      <SupplierPanel records={supplierRecords(facts.deliveries ?? [])} />
      <ClosedOrders orders={listClosedOrders(db)} parts={facts.parts} today={facts.today} />
    </div>
  );
}
