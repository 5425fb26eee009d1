import type { Metadata } from 'next';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { dayText } from '@/app/_shared/format';
import { Breadcrumb, ButtonLink, EmptyState, TitleBlock } from '@/app/_shared/ui';
import { materialWords } from '@/app/_shared/words/material-words';
import { shopWeeks, WEEKS_AHEAD } from './_parts/shop-weeks';
import { WeekNotes } from './_parts/week-notes';
import { WeekTable } from './_parts/week-table';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'What can be made, by week' };

/** Every size against the next weeks: could one more end be made, behind all that is planned? */
export default async function WeeksPage() {
  const { outlook, asOfMs } = await shopView();
  const { facts } = outlook;
  const rows = shopWeeks(outlook);
  const reference = facts.materials.find(({ isReference }) => isReference);
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here="By week" />
      <TitleBlock
        title="What can be made, by week"
        lead={`Could one more end be coned, threaded and accepted in that week, once the plan has had what it needs? Counted over the plan’s own futures, orders on the days they are likely to come. Ends are those likely to be left in the edges, in ${reference ? materialWords(reference) : 'the reference material'}.`}
        cells={[
          { label: 'As of', value: dayText(facts.today) },
          { label: 'Ahead', value: `${WEEKS_AHEAD} weeks` },
        ]}
        actions={<ButtonLink href="/plan/what-if">Try a change</ButtonLink>}
      />
      {rows.length === 0 ? (
        <EmptyState title="No sizes in use" action={<ButtonLink href="/sizes">Sizes</ButtonLink>}>
          Say first which sizes the shop makes.
        </EmptyState>
      ) : (
        <>
          <WeekTable rows={rows} facts={facts} />
          <WeekNotes rows={rows} facts={facts} />
        </>
      )}
    </div>
  );
}
