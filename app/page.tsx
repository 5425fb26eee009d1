import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { lineLabeller, planRows } from '@/app/plan/_parts/plan-rows';
import { shopName } from '@/db/client';
import { listOpenLines } from '@/db/queries/jobs';
import { decisions } from '@/lib/outlook/decisions';
import { DecisionList } from './_today/decision-list';
import { DemoLine } from './_today/demo-line';
import { FirstSteps } from './_today/first-steps';
import { Headline } from './_today/headline';
import { JobList } from './_today/job-list';
import { MoreLine } from './_today/more-line';
import { SizeStrip } from './_today/size-strip';
import { WaitingList } from './_today/waiting-list';

export const dynamic = 'force-dynamic';

/** Today: the worst blocker and what to do about it, the other decisions, every size in use, the open jobs. */
export default async function TodayPage() {
  const { outlook, db, asOfMs } = await shopView();
  const { connections, tools, today } = outlook.facts;
  const lines = listOpenLines(db);
  if (connections.length === 0 || (tools.length === 0 && lines.length === 0))
    return <FirstSteps outlook={outlook} lineCount={lines.length} />;
  const rows = planRows(outlook, lines);
  const all = decisions(outlook.facts, outlook.lines);
  const [first, ...others] = all;
  const worst = first?.kind === 'line' ? rows.find(({ line }) => line.id === first.line.id) : undefined;
  const shared = { outlook, rows, lineLabel: lineLabeller(lines) };
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Headline {...shared} worst={worst} />
      {shopName() === 'demo' ? <DemoLine /> : null}
      <DecisionList {...shared} decisions={worst === undefined ? all : others} />
      <WaitingList db={db} facts={outlook.facts} />
      <SizeStrip outlook={outlook} />
      <JobList rows={rows} today={today} />
      <MoreLine />
    </div>
  );
}
