import type { Metadata, Route } from 'next';
import { notFound } from 'next/navigation';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopFacts } from '@/app/_server/outlook';
import { dayText, money } from '@/app/_shared/format';
import { Breadcrumb, ButtonLink, KeyValue, Panel, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { listOrderReceipts } from '@/db/queries/order-receipts';
import { findOrder } from '@/db/queries/orders';
import { orderText } from '@/lib/orders/order-text';
import { spellOut } from '@/lib/orders/spell-out';
import { CancelForm } from '../_parts/order-forms';
import styles from '../_parts/orders.module.css';
import { PlaceDraft } from './_parts/place-draft';
import { ReceiptsPanel } from './_parts/receipts-panel';
import { statusWords } from './_parts/status-words';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Order' };

/** One order as a page to print or a text to mail, with its next step. */
export default async function OrderPage({ params }: PageProps<'/plan/orders/[id]'>) {
  const { id } = await params;
  const facts = shopFacts();
  const order = findOrder(shopDb(), decodeURIComponent(id));
  const part = facts.parts.find((known) => known.id === order?.partId);
  if (order === undefined || part === undefined) notFound();
  const { today, connections, shop } = facts;
  const spelled = spellOut(part, connections);
  const supplier = order.supplier === '' ? part.supplier : order.supplier;
  const currency = shop?.currency ?? 'USD';
  const isDraft = order.status === 'drafted' || order.status === 'approved';
  const neededOnDay = isDraft ? null : order.expectedOnDay;
  const text = orderText(
    { ...order, supplier, neededOnDay },
    { shopName: shop?.name ?? '', part, connections },
  );
  const price = order.unitPriceMinor;
  return (
    <div className="page">
      <Breadcrumb
        trail={[
          { href: '/plan', label: 'Plan' },
          { href: '/plan/orders', label: 'Orders' },
        ]}
        here={order.id}
      />
      <TitleBlock
        title={`Order ${order.id}`}
        lead={shop?.name}
        cells={[
          { label: 'State', value: statusWords(order, today) },
          { label: 'Supplier', value: supplier === '' ? 'none on record' : supplier },
          { label: isDraft ? 'Drafted' : 'Placed', value: dayText(order.placedOnDay, today) },
          ...(isDraft ? [] : [{ label: 'Promised', value: dayText(order.promisedOnDay, today) }]),
        ]}
        actions={
          order.status === 'placed' ? (
            <ButtonLink href={`/tools/receive?order=${encodeURIComponent(order.id)}` as Route}>
              It came: receive it
            </ButtonLink>
          ) : null
        }
      />
      <Panel title={`${order.quantity} × ${spelled.designation}`}>
        <KeyValue
          items={[
            { label: 'Part', value: part.name },
            ...(spelled.handWords === null ? [] : [{ label: 'Hand', value: <b>{spelled.handWords}</b> }]),
            ...(price === null ? [] : [{ label: 'Each', value: money(price, currency) }]),
            ...(price === null ? [] : [{ label: 'In all', value: money(price * order.quantity, currency) }]),
            ...(order.why === '' ? [] : [{ label: 'For', value: order.why }]),
          ]}
        />
        <ul>
          {spelled.warnings.map((warning) => (
            <li key={warning}>{warning}</li>
          ))}
        </ul>
        <p className="fine">
          Certificate with the parts, lot marked on the box. Sizes are examples: confirm in the fitting
          maker’s manual.
        </p>
      </Panel>
      <div className="stack no-print">
        {order.status === 'approved' ? (
          <PlaceDraft order={order} part={part} today={today} stamp={newStamp()} />
        ) : null}
        <ReceiptsPanel receipts={listOrderReceipts(shopDb(), order.id)} today={today} />
        {order.status === 'received' || order.status === 'cancelled' ? null : (
          <Panel title="As text for a mail" aside="or print this page">
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a text that may scroll must be reachable by keyboard */}
            <pre className={styles.mail} tabIndex={0}>
              {text}
            </pre>
          </Panel>
        )}
        {isDraft ? (
          <Panel title="Not wanted after all">
            <CancelForm orderId={order.id} stamp={newStamp()} words="Put the draft aside" />
          </Panel>
        ) : null}
      </div>
    </div>
  );
}
