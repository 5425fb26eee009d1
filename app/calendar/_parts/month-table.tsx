import type { Route } from 'next';
import Link from 'next/link';
import { dayText } from '@/app/_shared/format';
import { dueHref, dueShort, dueTitle } from '@/app/_shared/words/due-words';
import type { DueDate } from '@/lib/due-dates/due-date';
import { monthGrid } from '@/lib/due-dates/month-grid';
import styles from './calendar.module.css';
import { DueMark } from './due-mark';

interface MonthTableProps {
  readonly month: string;
  readonly label: string;
  readonly dues: readonly DueDate[];
  readonly today: string;
}

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
/** More than these of a day are counted; the list below has them all. */
const MOST_PER_DAY = 4;

/** A month as a wall calendar: weeks by ISO 8601, Monday first. The list below it says the same in full. */
export function MonthTable({ month, label, dues, today }: MonthTableProps) {
  return (
    <table className={styles.month}>
      <caption className="vh">{label}, week by week</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="vh">Week</span>
          </th>
          {WEEKDAYS.map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {monthGrid(month).map(({ weekText, days }) => (
          <tr key={weekText}>
            <th scope="row">{weekText.slice(5)}</th>
            {days.map(({ day, inMonth }) => (
              <td key={day} data-out={inMonth ? undefined : ''} data-today={day === today ? '' : undefined}>
                <DayCell day={day} today={today} dues={dues.filter(({ onDay }) => onDay === day)} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function DayCell({ day, today, dues }: { day: string; today: string; dues: readonly DueDate[] }) {
  const more = dues.length - MOST_PER_DAY;
  return (
    <>
      <span className={styles.dayNumber}>
        <span aria-hidden="true">{Number(day.slice(8))}</span>
        <span className="vh">
          {dayText(day, today)}
          {day === today ? ', today' : ''}
        </span>
      </span>
      {dues.length === 0 ? null : (
        <ul>
          {dues.slice(0, more === 1 ? MOST_PER_DAY + 1 : MOST_PER_DAY).map((due) => (
            <li key={due.id}>
              <Link href={dueHref(due) as Route} prefetch={false} title={dueTitle(due)}>
                <DueMark kind={due.kind} /> {dueShort(due)}
              </Link>
            </li>
          ))}
          {more > 1 ? (
            <li>
              <a href={`#${day}`}>and {more} more</a>
            </li>
          ) : null}
        </ul>
      )}
    </>
  );
}
