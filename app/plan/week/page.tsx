import type { Metadata } from 'next';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { dayText } from '@/app/_shared/format';
import { Breadcrumb, EmptyState, TitleBlock } from '@/app/_shared/ui';
import { lineLabeller, planRows } from '@/app/plan/_parts/plan-rows';
import { listOpenLines } from '@/db/queries/jobs';
import { addDays, isoWeekText } from '@/lib/calendar';
import { shortGroups } from '@/lib/issue-order/short-groups';
import { issueWeeks, weekList } from '@/lib/issue-order/week-list';
import { askedWeek } from './_parts/asked-week';
import { GainPanel } from './_parts/gain-panel';
import { IssueList } from './_parts/issue-list';
import { ShortPanel } from './_parts/short-panel';
import { WeekChoice } from './_parts/week-choice';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Tools for the week' };

/** The crib's list of a week: every line that begins in it with the die and the blade that go out, and why. */
export default async function WeekPage({ searchParams }: PageProps<'/plan/week'>) {
  const { outlook, db, asOfMs } = await shopView();
  const { facts, ensemble } = outlook;
  const lines = listOpenLines(db);
  const rows = new Map(planRows(outlook, lines).map((row) => [row.line.id, row]));
  const fromDay = askedWeek((await searchParams).week, facts.today);
  const list = weekList(facts, ensemble, fromDay);
  const lineLabel = lineLabeller(lines);
  const partName = (id: string) => facts.parts.find((part) => part.id === id)?.name ?? id;
  const proposals = list.lines.flatMap((line) => line.proposals);
  const sure = proposals.filter(({ chosen, required }) => (chosen?.probability ?? 0) >= required);
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here="Tools for the week" />
      <TitleBlock
        title="Tools for the week"
        lead="Which die and which blade go out with each line: the most worn that is sure enough to last."
        cells={[
          { label: 'Week', value: isoWeekText(fromDay) },
          { label: 'From', value: `${dayText(fromDay)} to ${dayText(addDays(fromDay, 6))}` },
          { label: 'Lines', value: list.lines.length },
          { label: 'One edge is enough', value: `${sure.length} of ${proposals.length}` },
        ]}
      />
      <WeekChoice weeks={issueWeeks(facts, ensemble)} fromDay={fromDay} />
      {list.lines.length === 0 ? (
        <EmptyState title="No line begins in this week">Choose another week, or enter a job.</EmptyState>
      ) : (
        <IssueList list={list} rows={rows} today={facts.today} lineLabel={lineLabel} />
      )}
      <ShortPanel groups={shortGroups(facts, ensemble)} partName={partName} lineLabel={lineLabel} />
      <GainPanel gains={list.gains} partName={partName} />
    </div>
  );
}
