import type { Metadata } from 'next';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopFacts } from '@/app/_server/outlook';
import { Breadcrumb, ButtonLink, EmptyState, TitleBlock } from '@/app/_shared/ui';
import { JustDone } from '../_parts/just-done';
import { choosePart, type PartChoice } from './_parts/part-choice';
import { PartForm } from './_parts/part-form';
import { ReceiveForm } from './_parts/receive-form';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Receive a tool' };

/** Receives a tool into the crib: first what it is, then its mark and its hand. */
export default async function ReceivePage({ searchParams }: PageProps<'/tools/receive'>) {
  const facts = shopFacts();
  const asked = await searchParams;
  const choice: PartChoice | undefined = choosePart(facts, asked);
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/tools', label: 'Tools' }]} here="Receive" />
      <TitleBlock
        title="Receive a tool"
        lead="Check hand, threads per inch and service against the box before it goes on a peg."
      />
      <JustDone entryId={asked.done} />
      {facts.parts.length === 0 ? (
        <EmptyState
          title="The shop has no parts yet"
          action={<ButtonLink href="/setup">Set up the shop</ButtonLink>}
        >
          Say first which sizes are in use; the parts of a complete set come with them.
        </EmptyState>
      ) : (
        <PartForm parts={facts.parts} partId={choice?.part.id} orderId={choice?.orderId ?? ''} />
      )}
      {choice ? (
        <ReceiveForm
          key={choice.part.id + choice.suggestedId}
          choice={choice}
          stamp={newStamp()}
          today={facts.today}
        />
      ) : null}
    </div>
  );
}
