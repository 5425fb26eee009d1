import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { timeZone } from '@/app/_server/clock';
import { shopNames } from '@/app/_server/names';
import { shopOutlook } from '@/app/_server/outlook';
import { shopDb } from '@/db/client';
import { listEntriesAbout } from '@/db/queries/entries';
import { listPeople } from '@/db/queries/shop';
import { findTool } from '@/db/queries/tools';
import { JustDone } from '../_parts/just-done';
import { CustodyPanel } from './_parts/custody-panel';
import { cutInHand } from './_parts/cut-in-hand';
import { AsidePanels, WorkPanels } from './_parts/edge-panels';
import { HistoryPanel } from './_parts/history-panel';

import { ToolHead } from './_parts/tool-head';

export const dynamic = 'force-dynamic';

const HISTORY_LIMIT = 200;

export async function generateMetadata({ params }: PageProps<'/tools/[id]'>): Promise<Metadata> {
  return { title: decodeURIComponent((await params).id) };
}

/** One tool: what it is, what it has left for the work in hand, log, custody, and its whole history. */
export default async function ToolPage({ params, searchParams }: PageProps<'/tools/[id]'>) {
  const db = shopDb();
  const tool = findTool(db, decodeURIComponent((await params).id));
  if (tool === undefined) notFound();
  const outlook = shopOutlook();
  const part = outlook.facts.parts.find(({ id }) => id === tool.partId);
  if (part === undefined) notFound();
  const asked = await searchParams;
  const cut = cutInHand(outlook, { part, heldForLineId: tool.jobLineId, asked });
  const edges = outlook.facts.edges.filter((edge) => edge.toolId === tool.id);
  const about = { outlook, tool, part, cut };
  const { today } = outlook.facts;
  const cutting = edges.at(-1)?.end === null;
  return (
    <div className="page">
      <ToolHead tool={tool} part={part} edges={edges} cut={cut} today={today} />
      <JustDone entryId={asked.done} />
      <div className={cutting ? 'columns-lead' : 'stack-loose'}>
        <div className="stack-loose">
          <WorkPanels {...about} />
        </div>
        <div className="stack-loose">
          <CustodyPanel {...about} people={listPeople(db)} cutting={cutting} />
          <AsidePanels {...about} />
        </div>
      </div>
      <HistoryPanel
        entries={listEntriesAbout(db, { kind: 'tool', id: tool.id, limit: HISTORY_LIMIT })}
        names={shopNames()}
        timeZone={timeZone()}
        today={today}
      />
    </div>
  );
}
