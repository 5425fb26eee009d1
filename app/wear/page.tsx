import type { Metadata } from 'next';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopView } from '@/app/_server/outlook';
import { studyState } from '@/app/_server/study';
import { FiguresNote } from '@/app/_shared/figures-note';
import { ButtonLink, EmptyState, TitleBlock } from '@/app/_shared/ui';
import { countsSentence } from '@/app/_shared/words/wear-words';
import { kindWear } from '@/lib/outlook/kind-wear';
import { materialWears } from '@/lib/outlook/material-wear';
import { partWears } from '@/lib/outlook/part-wear';
import { EDGE_KINDS } from '@/lib/shop/vocabulary';
import { BeliefPanel } from './_parts/belief-panel';
import { asksForDecision, ComparisonPanel } from './_parts/comparison-panel';
import { KindPanel } from './_parts/kind-panel';
import { MaterialPanel } from './_parts/material-panel';
import { ReadingPanel } from './_parts/reading-panel';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Wear' };

/** Wear: what the shop's own log says of how long edges last, by part, and what was believed before it spoke. */
export default async function WearPage() {
  const { outlook, asOfMs } = await shopView();
  const wears = partWears(outlook);
  if (wears.length === 0) return <NoEdges />;
  const kinds = [...EDGE_KINDS].reverse();
  const fits = kinds.flatMap((kind) => outlook.ensemble.fit(kind) ?? []);
  const comparisons = studyState('comparisons');
  const urgent = asksForDecision(comparisons);
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <TitleBlock
        title="Wear"
        lead={`How long edges last here, from your own log: ${fits.map(countsSentence).join('; ')}.`}
        actions={<ButtonLink href="/scorecard">How often was it right?</ButtonLink>}
      />
      {urgent ? <ComparisonPanel state={comparisons} /> : null}
      {kinds.map((kind) => {
        const wear = kindWear(outlook, kind);
        const parts = wears.filter((part) => part.kind === kind);
        return wear && parts.length > 0 ? <KindPanel key={kind} wear={wear} parts={parts} /> : null;
      })}
      {urgent ? null : <ComparisonPanel state={comparisons} />}
      <MaterialPanel
        wears={materialWears(outlook)}
        reference={outlook.facts.materials.find(({ isReference }) => isReference)}
      />
      <ReadingPanel settings={outlook.facts.readingSettings} stamp={newStamp()} />
      <BeliefPanel beliefs={outlook.facts.beliefs ?? []} stamps={{ die: newStamp(), blade: newStamp() }} />
    </div>
  );
}

function NoEdges() {
  return (
    <div className="page">
      <TitleBlock title="Wear" lead="How long edges last here, from your own log." />
      <EmptyState title="No edges yet" action={<ButtonLink href="/setup">Set up the shop</ButtonLink>}>
        Say which sizes the shop works in; each comes with its dies and blades.
      </EmptyState>
    </div>
  );
}
