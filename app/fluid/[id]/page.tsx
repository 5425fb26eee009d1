import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { timeZone } from '@/app/_server/clock';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopNames } from '@/app/_server/names';
import { shopView } from '@/app/_server/outlook';
import { Cautions } from '@/app/_shared/cautions';
import { FiguresNote } from '@/app/_shared/figures-note';
import { Panel } from '@/app/_shared/ui';
import { HistoryPanel } from '@/app/tools/[id]/_parts/history-panel';
import { listEntriesAbout } from '@/db/queries/entries';
import { listFluidJobs } from '@/db/queries/fluids';
import { findTool } from '@/db/queries/tools';
import { bottleOf } from '@/lib/outlook/fluid-facts';
import { BottleHead } from './_parts/bottle-head';
import { CarePanels } from './_parts/care-panels';
import { JobsPanel } from './_parts/jobs-panel';
import { JustDone } from './_parts/just-done';
import { LifePanel } from './_parts/life-panel';
import { LotPanel } from './_parts/lot-panel';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/fluid/[id]'>): Promise<Metadata> {
  return { title: decodeURIComponent((await params).id) };
}

/** One bottle: may it be used, to which day, what is left, its lot and label, and its whole history. */
export default async function BottlePage({ params, searchParams }: PageProps<'/fluid/[id]'>) {
  const { outlook, db, asOfMs } = await shopView();
  const { facts } = outlook;
  const tool = findTool(db, decodeURIComponent((await params).id));
  const [bottle] = tool === undefined ? [] : bottleOf(facts, tool);
  if (tool === undefined || bottle === undefined) notFound();
  const about = { tool, bottle, facts };
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <BottleHead {...about} />
      <JustDone entryId={(await searchParams).done} />
      <LifePanel {...about} />
      <div className="columns-lead">
        <div className="stack-loose">
          <CarePanels {...about} />
          <LotPanel {...about} stamp={newStamp()} />
        </div>
        <div className="stack-loose">
          <Panel title="Before you touch it">
            <Cautions at="fluid" />
          </Panel>
          <JobsPanel jobs={listFluidJobs(db, tool.id)} today={facts.today} />
        </div>
      </div>
      <HistoryPanel
        entries={listEntriesAbout(db, { kind: 'tool', id: tool.id, limit: 200 })}
        names={shopNames()}
        timeZone={timeZone()}
        today={facts.today}
      />
    </div>
  );
}
