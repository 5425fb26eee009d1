import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { shopOutlook } from '@/app/_server/outlook';
import { lineLabeller, planRows } from '@/app/plan/_parts/plan-rows';
import { shopDb } from '@/db/client';
import { findLine, listOpenLines } from '@/db/queries/jobs';
import { setChecklist } from '@/lib/capability/set-checklist';
import { planArrivals, planConnections, planLines, setItems } from '@/lib/outlook/plan-facts';
import { ChecklistPanel } from './_parts/checklist-panel';
import { ClosedLine } from './_parts/closed-line';
import { FirstPanel } from './_parts/first-panel';
import { LineHead } from './_parts/line-head';
import { VerdictPanel } from './_parts/verdict-panel';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/plan/lines/[id]'>): Promise<Metadata> {
  return { title: `Line ${decodeURIComponent((await params).id)}` };
}

/** One line of the plan: the verdict with its reason, and the complete set as a list to take to the crib. */
export default async function LinePage({ params }: PageProps<'/plan/lines/[id]'>) {
  const db = shopDb();
  const line = findLine(db, decodeURIComponent((await params).id));
  if (line === undefined) notFound();
  if (line.jobStatus !== 'open') return <ClosedLine line={line} />;
  const outlook = shopOutlook();
  const { facts } = outlook;
  const lines = listOpenLines(db);
  const row = planRows(outlook, lines).find((known) => known.line.id === line.id);
  if (row === undefined) notFound();
  const plan = {
    today: facts.today,
    lines: planLines(facts),
    connections: planConnections(facts),
    items: setItems(facts),
    arrivals: planArrivals(facts),
  };
  const shared = { row, outlook, lineLabel: lineLabeller(lines) };
  return (
    <div className="page">
      <LineHead row={row} today={facts.today} />
      <VerdictPanel row={row} today={facts.today} lineLabel={shared.lineLabel} />
      <FirstPanel {...shared} />
      <ChecklistPanel {...shared} checks={setChecklist(plan, row.verdict)} />
    </div>
  );
}
