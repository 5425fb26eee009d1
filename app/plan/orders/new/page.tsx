import type { Metadata } from 'next';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopFacts } from '@/app/_server/outlook';
import { Breadcrumb, ButtonLink, EmptyState, TitleBlock } from '@/app/_shared/ui';
import { addDays } from '@/lib/calendar';
import { PartChoice } from '../_parts/part-choice';
import { PartFacts } from '../_parts/part-facts';
import { PlaceOrderForm } from '../_parts/place-order-form';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Write down an order' };

/** An order placed with a supplier: first what, spelled out in full, then how many and by when. */
export default async function NewOrderPage({ searchParams }: PageProps<'/plan/orders/new'>) {
  const facts = shopFacts();
  const { today, parts } = facts;
  const asked = await searchParams;
  const part = parts.find(({ id }) => id === asked.part);
  const leadTimeDays = part?.leadTimeDays ?? null;
  return (
    <div className="page">
      <Breadcrumb
        trail={[
          { href: '/plan', label: 'Plan' },
          { href: '/plan/orders', label: 'Orders' },
        ]}
        here="New"
      />
      <TitleBlock
        title="Write down an order"
        lead="Read the designation out in full when ordering: right-hand look-alikes are everywhere, and 1 in tube is not 12 threads per inch."
      />
      {parts.length === 0 ? (
        <EmptyState
          title="The shop has no parts yet"
          action={<ButtonLink href="/setup">Set up the shop</ButtonLink>}
        >
          Say first which sizes are in use; the parts of a complete set come with them.
        </EmptyState>
      ) : (
        <PartChoice parts={parts} partId={part?.id} />
      )}
      {part === undefined ? null : (
        <>
          <PartFacts part={part} facts={facts} />
          <PlaceOrderForm
            key={part.id}
            partId={part.id}
            stamp={newStamp()}
            placedOnDay={today}
            expectedOnDay={leadTimeDays === null ? '' : addDays(today, leadTimeDays)}
            leadTimeDays={leadTimeDays}
            supplier={part.supplier}
            unitPriceMinor={part.priceMinor}
          />
        </>
      )}
    </div>
  );
}
