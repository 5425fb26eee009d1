import type { Route } from 'next';
import Link from 'next/link';
import { inDays } from '@/app/_shared/format';
import { dueBand, dueHref, dueTitle } from '@/app/_shared/words/due-words';
import { isoWeekText } from '@/lib/calendar';
import type { DueDate } from '@/lib/due-dates/due-date';
import styles from './calendar.module.css';
import { DueMark } from './due-mark';

/** The same as a list, day by day under its week: what a phone shows, and what is read out. */
export function Agenda({ dues, today }: { readonly dues: readonly DueDate[]; readonly today: string }) {
  const weeks = grouped(dues, ({ onDay }) => isoWeekText(onDay));
  return (
    <ol className={styles.agenda}>
      {[...weeks].map(([week, mine]) => (
        <li key={week}>
          <h3>Week {week}</h3>
          <ol>
            {[...grouped(mine, ({ onDay }) => onDay)].map(([day, these]) => (
              <li key={day} id={day} className={styles.day}>
                <p className={styles.when}>{inDays(day, today)}</p>
                <ul>
                  {these.map((due) => (
                    <li key={due.id}>
                      <DueMark kind={due.kind} />
                      <span>
                        <Link href={dueHref(due) as Route} prefetch={false}>
                          {dueTitle(due)}
                        </Link>
                        {due.band === undefined ? null : <span className="fine"> {dueBand(due, today)}</span>}
                      </span>
                    </li>
                  ))}
                </ul>
              </li>
            ))}
          </ol>
        </li>
      ))}
    </ol>
  );
}

/** In groups by a key, in the order in which the keys first come. */
function grouped(
  dues: readonly DueDate[],
  keyOf: (due: DueDate) => string,
): ReadonlyMap<string, readonly DueDate[]> {
  const groups = new Map<string, DueDate[]>();
  for (const due of dues) {
    const group = groups.get(keyOf(due)) ?? [];
    groups.set(keyOf(due), group);
    group.push(due);
  }
  return groups;
}
