import type { Route } from 'next';
import Link from 'next/link';
import { dayText } from '@/app/_shared/format';
import { type Day, isoWeekText } from '@/lib/calendar';
import styles from './week.module.css';

/** The weeks in which lines begin, as links. */
export function WeekChoice({ weeks, fromDay }: { readonly weeks: readonly Day[]; readonly fromDay: Day }) {
  return (
    <nav aria-label="Weeks" className="no-print">
      <ul className={styles.weeks}>
        {weeks.map((day) => (
          <li key={day}>
            <Link
              href={`/plan/week?week=${isoWeekText(day)}` as Route}
              aria-current={day === fromDay ? 'page' : undefined}
              prefetch={false}
            >
              {isoWeekText(day)}, from {dayText(day, day)}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
