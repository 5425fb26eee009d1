import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { lineLabeller, planRows } from '@/app/plan/_parts/plan-rows';
import { findLine, listOpenLines } from '@/db/queries/jobs';
import { setChecklist } from '@/lib/capability/set-checklist';
import { proposeTools } from '@/lib/issue-order/propose-tools';
import { shopPlan } from '@/lib/outlook/shop-plan';
import { ChecklistPanel } from './_parts/checklist-panel';
import { ClosedLine } from './_parts/closed-line';
import { FirstPanel } from './_parts/first-panel';
import { LineHead } from './_parts/line-head';
import { PricedWaysPanel } from './_parts/priced-ways-panel';
import { ServicePanel } from './_parts/service-panel';
import { ToolsPanel } from './_parts/tools-panel';
import { ValuePanel } from './_parts/value-panel';
import { VerdictPanel } from './_parts/verdict-panel';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/plan/lines/[id]'>): Promise<Metadata> {
  return { title: `Line ${decodeURIComponent((await params).id)}` };
}

/** One line of the plan: the verdict with its reason, and the complete set as a list to take to the crib. */
export default async function LinePage({ params }: PageProps<'/plan/lines/[id]'>) {
  const { outlook, db, asOfMs } = await shopView();
  const line = findLine(db, decodeURIComponent((await params).id));
  if (line === undefined) notFound();
  if (line.jobStatus !== 'open') return <ClosedLine line={line} />;
  const { facts } = outlook;
  const lines = listOpenLines(db);
  const row = planRows(outlook, lines).find((known) => known.line.id === line.id);
  if (row === undefined) notFound();
  const checks = setChecklist(shopPlan(facts, outlook.ensemble), row.verdict);
  const shared = { row, outlook, lineLabel: lineLabeller(lines) };
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <LineHead row={row} today={facts.today} />
      <VerdictPanel {...shared} checks={checks} today={facts.today} />
      <ServicePanel line={line} facts={facts} />
      <FirstPanel {...shared} />
      <ToolsPanel
        lineId={line.id}
        proposals={proposeTools(facts, outlook.ensemble, line.id)}
        today={facts.today}
        lineLabel={shared.lineLabel}
      />
      <ValuePanel row={row} />
      <PricedWaysPanel row={row} outlook={outlook} />
      <ChecklistPanel {...shared} checks={checks} />
    </div>
  );
}
