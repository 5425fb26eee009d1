import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { count, percent } from '@/app/_shared/format';
import { Breadcrumb, TitleBlock } from '@/app/_shared/ui';
import { horizonOf } from '@/app/plan/orders/_parts/horizon';
import { HorizonChoice } from '@/app/plan/orders/_parts/horizon-choice';
import { partProposals } from '@/lib/orders/order-proposals';
import { OffersPanel } from './_parts/offers-panel';
import { PiecesPanel } from './_parts/pieces-panel';
import { StockPanel } from './_parts/stock-panel';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'How many are needed' };

/** One part: chance of running out with 0, 1, 2 … more, the stock against the plan, and the ways to buy it. */
export default async function NeedPage({ params, searchParams }: PageProps<'/plan/orders/need/[partId]'>) {
  const partId = decodeURIComponent((await params).partId);
  const { outlook, asOfMs } = await shopView();
  const { facts, ensemble } = outlook;
  const horizonDays = horizonOf((await searchParams).weeks);
  const part = facts.parts.find(({ id }) => id === partId);
  if (part === undefined) notFound();
  const proposal = partProposals(facts, ensemble, horizonDays).find((known) => known.part.id === partId);
  const weeks = count(Math.round(horizonDays / 7), 'week');
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Breadcrumb
        trail={[
          { href: '/plan', label: 'Plan' },
          { href: '/plan/orders', label: 'Orders' },
        ]}
        here={part.name}
      />
      <TitleBlock
        title={`How many: ${part.name}`}
        lead={`Over the next ${weeks}: what the plan’s lines and the pace of the log ask for, beyond what is here and on order.`}
        cells={
          proposal === undefined
            ? []
            : [
                { label: 'To order', value: proposal.quantity || 'none' },
                { label: 'Runs out without', value: percent(proposal.runsOut.probability) },
                { label: 'On order', value: proposal.outlook.onOrder || 'none' },
                { label: 'Drafted', value: proposal.outlook.drafted || 'none' },
              ]
        }
      />
      <HorizonChoice horizonDays={horizonDays} path={`/plan/orders/need/${encodeURIComponent(partId)}`} />
      {proposal === undefined ? (
        <p>No line of the plan and no row of the log of the last half year asks for this part.</p>
      ) : (
        <>
          <PiecesPanel proposal={proposal} facts={facts} />
          <StockPanel proposal={proposal} facts={facts} ensemble={ensemble} />
          <OffersPanel proposal={proposal} facts={facts} />
        </>
      )}
    </div>
  );
}
