import type { Metadata } from 'next';
import { shopView } from '@/app/_server/outlook';
import { Cautions } from '@/app/_shared/cautions';
import { FiguresNote } from '@/app/_shared/figures-note';
import { ButtonLink, Panel, TitleBlock } from '@/app/_shared/ui';
import { fluidWork } from '@/lib/outlook/fluid-facts';
import { referenceMaterialId } from '@/lib/outlook/plan-facts';
import { DUTIES } from '@/lib/shop/duty';
import { BottleTable } from './_parts/bottle-table';
import { NeedPanels } from './_parts/need-panels';
import { PickPanel } from './_parts/pick-panel';
import { UsePanel } from './_parts/use-panel';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Fluid' };

/** Cutting fluid: which bottle to use first for the work in hand, what may not be used and why, and how long it lasts. */
export default async function FluidPage({ searchParams }: PageProps<'/fluid'>) {
  const { outlook, asOfMs } = await shopView();
  const { facts } = outlook;
  const asked = await searchParams;
  const material = facts.materials.find(({ id }) => id === asked.material);
  const duty = DUTIES.find((known) => known === asked.duty);
  const work = fluidWork(facts, { materialId: material?.id ?? referenceMaterialId(facts), duty });
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <TitleBlock
        title="Fluid"
        lead="First expired, first out. Shelf life and opened life both count."
        actions={
          <div className="cluster">
            <ButtonLink href="/tools/receive">Receive a bottle</ButtonLink>
            <ButtonLink tone="quiet" href="/fluid/register">
              Chemical register
            </ButtonLink>
          </div>
        }
      />
      <PickPanel facts={facts} work={work} />
      <BottleTable facts={facts} />
      <NeedPanels facts={facts} />
      <UsePanel facts={facts} />
      <Panel title="Before you touch it">
        <Cautions at="fluid" />
      </Panel>
    </div>
  );
}
