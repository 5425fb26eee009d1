import type { Metadata } from 'next';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { dayText } from '@/app/_shared/format';
import { EmptyState, TitleBlock } from '@/app/_shared/ui';
import { listClosedJobs, listOpenLines } from '@/db/queries/jobs';
import { checklistReader } from '@/lib/capability/set-checklist';
import { shopPlan } from '@/lib/outlook/shop-plan';
import { ClosedJobs } from './_parts/closed-jobs';
import { restsOnSentences } from './_parts/coming-words';
import { JustPlanned } from './_parts/just-planned';
import { LineGroup } from './_parts/line-group';
import { PlanActions } from './_parts/plan-actions';
import { lineLabeller, type PlanRow, planRows } from './_parts/plan-rows';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Plan' };

/** Every open line: can the shop make it, and if not, what is in the way and until when. The worst comes first. */
export default async function PlanPage({ searchParams }: PageProps<'/plan'>) {
  const { outlook, db, asOfMs } = await shopView();
  const { today } = outlook.facts;
  const lines = listOpenLines(db);
  const rows = planRows(outlook, lines);
  const group = (verdict: string) =>
    rows.filter((row) => row.endsToMake > 0 && row.verdict.verdict === verdict);
  const cannot = group('cannot-make-now');
  const [risk, can] = [group('at-risk'), group('can-make')];
  const made = rows.filter(({ endsToMake }) => endsToMake === 0);
  const lineLabel = lineLabeller(lines);
  const checksOf = checklistReader(shopPlan(outlook.facts, outlook.ensemble));
  const restsOn = ({ verdict }: PlanRow) => restsOnSentences(checksOf(verdict), today, lineLabel);
  const shared = { today, lineLabel, restsOn, alarmLineId: cannot[0]?.line.id };
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <TitleBlock
        title="Plan"
        lead="Every open line against the tools, gauges and fluid that it needs, on its own dates."
        cells={[
          { label: 'As of', value: dayText(today) },
          { label: 'Cannot make now', value: cannot.length },
          { label: 'At risk', value: risk.length },
          { label: 'Can make', value: can.length },
        ]}
        actions={<PlanActions />}
      />
      <JustPlanned asked={await searchParams} rows={rows} />
      {rows.length === 0 ? (
        <EmptyState title="No open jobs">
          Enter a job, or import the list. Each line then says whether it can be made, and what is missing.
        </EmptyState>
      ) : null}
      <LineGroup title="Cannot make now" rows={cannot} {...shared} />
      <LineGroup title="At risk" rows={risk} {...shared} />
      <LineGroup title="Can make" rows={can} {...shared} />
      <LineGroup title="All ends made: close the job" rows={made} {...shared} />
      <ClosedJobs jobs={listClosedJobs(db, 20)} />
    </div>
  );
}
