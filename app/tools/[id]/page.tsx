import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { listPeople } from '@/db/queries/shop';
import { findTool } from '@/db/queries/tools';
import { JustDone } from '../_parts/just-done';
import { CarePanel } from './_parts/care-panel';
import { CustodyPanel } from './_parts/custody-panel';
import { cutInHand } from './_parts/cut-in-hand';
import { AsidePanels, WorkPanels } from './_parts/edge-panels';
import { MarkPanel } from './_parts/mark-panel';
import { readSure } from './_parts/read-sure';
import { ThreadCoursePanel } from './_parts/thread-course-panel';
import { ToolHead } from './_parts/tool-head';
import { ToolHistory } from './_parts/tool-history';
import { ToolStanding } from './_parts/tool-standing';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/tools/[id]'>): Promise<Metadata> {
  return { title: decodeURIComponent((await params).id) };
}

/** One tool: what it is, what it has left for the work in hand, log, custody, and its whole history. */
export default async function ToolPage({ params, searchParams }: PageProps<'/tools/[id]'>) {
  const { outlook, db, asOfMs } = await shopView();
  const tool = findTool(db, decodeURIComponent((await params).id));
  if (tool === undefined) notFound();
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
      <FiguresNote asOfMs={asOfMs} />
      <ToolHead tool={tool} part={part} edges={edges} cut={cut} today={today} />
      <ToolStanding tool={tool} today={today} />
      <JustDone entryId={asked.done} />
      <div className={cutting ? 'columns-lead' : 'stack-loose'}>
        <div className="stack-loose">
          <WorkPanels {...about} sure={readSure(asked.sure)} />
          <ThreadCoursePanel db={db} tool={tool} unit={outlook.facts.shop?.units ?? 'in'} today={today} />
        </div>
        <div className="stack-loose">
          <CustodyPanel {...about} people={listPeople(db)} cutting={cutting} />
          <CarePanel {...about} cutting={cutting} />
          <AsidePanels {...about} />
          <MarkPanel tool={tool} today={today} />
        </div>
        <ToolHistory db={db} toolId={tool.id} today={today} />
      </div>
    </div>
  );
}
