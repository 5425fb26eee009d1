import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { shopDueDates } from '@/app/_server/due-dates';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { dayText } from '@/app/_shared/format';
import { Breadcrumb, TitleBlock } from '@/app/_shared/ui';
import { monthLabel } from '@/lib/calendar';
import { isMonth } from '@/lib/due-dates/month-grid';
import { AgendaPanels } from './_parts/agenda-panels';
import { askedKinds } from './_parts/asked-kinds';
import { FeedPanel } from './_parts/feed-panel';
import { Filter } from './_parts/filter';
import { MonthPanel } from './_parts/month-panel';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Calendar' };

/** What falls due and when: a month of it, on a wall and as a list. */
export default async function CalendarPage({ searchParams }: PageProps<'/calendar'>) {
  const { outlook, asOfMs } = await shopView();
  const { today } = outlook.facts;
  const asked = await searchParams;
  const month = typeof asked.month === 'string' && isMonth(asked.month) ? asked.month : today.slice(0, 7);
  const kinds = askedKinds(asked.kind);
  const all = shopDueDates(outlook).filter(({ kind }) => kinds.includes(kind));
  const dues = all.filter(({ onDay }) => onDay.startsWith(month));
  const overdue = all.filter(({ onDay, kind }) => onDay < today && kind !== 'job-start');
  const label = monthLabel(`${month}-01`);
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here="Calendar" />
      <TitleBlock
        title="Calendar"
        lead="What falls due: jobs, orders, calibrations, fluid, and edges to be changed."
        cells={[
          { label: 'As of', value: dayText(today) },
          { label: 'This month', value: dues.length },
          { label: 'Overdue', value: overdue.length },
        ]}
      />
      <Filter month={month} kinds={kinds} />
      <MonthPanel month={month} kinds={kinds} dues={dues} today={today} />
      <AgendaPanels label={label} overdue={overdue} dues={dues} today={today} />
      <FeedPanel kinds={kinds} host={(await headers()).get('host') ?? 'this server'} />
    </div>
  );
}
