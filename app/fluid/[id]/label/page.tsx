import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { shopView } from '@/app/_server/outlook';
import { Breadcrumb, TitleBlock } from '@/app/_shared/ui';
import { PrintButton } from '@/app/_shared/ui/print-button';
import { findTool } from '@/db/queries/tools';
import { fluidLabel } from '@/lib/fluid/label';
import { bottleUseBy } from '@/lib/fluid/use-by';
import { bottleOf } from '@/lib/outlook/fluid-facts';
import { BottleLabel, DropperLabel } from './_parts/labels';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Label' };

/** The labels of a bottle and of its dropper, to the millimetre, from what is written down of its lot. */
export default async function LabelPage({ params }: PageProps<'/fluid/[id]/label'>) {
  const { outlook, db } = await shopView();
  const tool = findTool(db, decodeURIComponent((await params).id));
  const [bottle] = tool === undefined ? [] : bottleOf(outlook.facts, tool);
  if (bottle === undefined) notFound();
  const label = fluidLabel({
    toolId: bottle.toolId,
    productName: bottle.part.name,
    lot: bottle.lot,
    openedOnDay: bottle.openedOnDay,
    useByDay: bottleUseBy(bottle).onDay,
    chlorinated: bottle.chlorinated,
    lotFacts: bottle.lotFacts,
  });
  return (
    <div className="page">
      <div className="page no-print">
        <Breadcrumb
          trail={[
            { href: '/fluid', label: 'Fluid' },
            { href: `/fluid/${encodeURIComponent(bottle.toolId)}`, label: bottle.toolId },
          ]}
          here="Label"
        />
        <TitleBlock
          title="Labels"
          lead="Print at 100 %, not fitted to the page: the bottle’s is 85 × 54 mm, the dropper’s 50 × 25 mm. Every bottle is labelled, the dropper too."
          actions={<PrintButton />}
        />
      </div>
      <BottleLabel label={label} />
      <DropperLabel label={label} />
    </div>
  );
}
