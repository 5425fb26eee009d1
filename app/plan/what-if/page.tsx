import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { count, dayText } from '@/app/_shared/format';
import { Breadcrumb, ButtonLink, FormMessage, TitleBlock } from '@/app/_shared/ui';
import { movedLines, movedSizes } from '@/lib/what-if/moved-lines';
import { whatIf } from '@/lib/what-if/what-if';
import { addedChange, askedChanges, whatIfHref } from './_parts/asked-changes';
import { ChangeForms } from './_parts/change-forms';
import { ChangeList } from './_parts/change-list';
import { LineMoves } from './_parts/line-moves';
import { SizeMoves } from './_parts/size-moves';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'What if' };

/** The plan with changes tried on it, before and after. The address holds the question; nothing is saved. */
export default async function WhatIfPage({ searchParams }: PageProps<'/plan/what-if'>) {
  const asked = await searchParams;
  const { changes, refusals } = askedChanges(asked);
  const added = addedChange(asked);
  if (added?.ok) redirect(whatIfHref([...changes, added.value]));
  const { outlook, asOfMs } = await shopView();
  const { facts } = outlook;
  const tried = whatIf(outlook, changes);
  const moved = tried.ok ? movedLines(outlook.lines, tried.value.lines) : undefined;
  const wrong = [
    ...refusals,
    ...(added?.ok === false ? [added.refusal] : []),
    ...(tried.ok ? [] : [tried.refusal]),
  ];
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here="What if" />
      <TitleBlock
        title="What if"
        lead="Try a change on the plan without entering it. Before and after are counted over the same futures, so what moves is the change. The address keeps the question: send it, or print the page."
        cells={[
          { label: 'As of', value: dayText(facts.today) },
          { label: 'Tried', value: count(changes.length, 'change') },
          {
            label: 'Answers that move',
            value: changes.length === 0 ? 'none yet' : (moved?.answers.length ?? 'not known'),
          },
        ]}
        actions={changes.length > 0 ? <ButtonLink href="/plan/what-if">Start again</ButtonLink> : undefined}
      />
      {wrong.length > 0 ? (
        <FormMessage tone="refusal">{wrong.map(({ sentence }) => sentence).join(' ')}</FormMessage>
      ) : null}
      <ChangeList changes={changes} facts={facts} />
      {tried.ok && moved && changes.length > 0 ? (
        <>
          <LineMoves moved={moved} before={facts} after={tried.value.facts} />
          <SizeMoves moved={movedSizes(outlook.sizes, tried.value.sizes())} facts={facts} />
        </>
      ) : null}
      <ChangeForms facts={facts} changes={changes} asked={asked} />
    </div>
  );
}
