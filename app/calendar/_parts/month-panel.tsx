import Link from 'next/link';
import { Panel } from '@/app/_shared/ui';
import { monthLabel } from '@/lib/calendar';
import type { DueDate, DueKind } from '@/lib/due-dates/due-date';
import { addMonths } from '@/lib/due-dates/month-grid';
import { calendarHref } from './address';
import styles from './calendar.module.css';
import { MonthTable } from './month-table';

interface MonthPanelProps {
  readonly month: string;
  readonly kinds: readonly DueKind[];
  readonly dues: readonly DueDate[];
  readonly today: string;
}

/** A month with its way to the months beside it. */
export function MonthPanel({ month, kinds, dues, today }: MonthPanelProps) {
  const label = monthLabel(`${month}-01`);
  const beside = (months: number) => {
    const other = addMonths(month, months);
    return <Link href={calendarHref(other, kinds)}>{monthLabel(`${other}-01`)}</Link>;
  };
  return (
    <Panel title={label}>
      <nav aria-label="Months" className={`${styles.months} no-print`}>
        {beside(-1)}
        <Link href={calendarHref(undefined, kinds)}>This month</Link>
        {beside(1)}
      </nav>
      <MonthTable month={month} label={label} dues={dues} today={today} />
    </Panel>
  );
}
