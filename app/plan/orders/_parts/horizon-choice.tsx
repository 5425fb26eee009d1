import type { Route } from 'next';
import Link from 'next/link';
import { HORIZON_WEEKS } from './horizon';
import styles from './orders.module.css';

/** How far ahead to look, as links: to the next shutdown, say. */
export function HorizonChoice({
  horizonDays,
  path,
}: {
  readonly horizonDays: number;
  readonly path: string;
}) {
  return (
    <nav aria-label="How far ahead" className="no-print">
      <ul className={styles.weeks}>
        {HORIZON_WEEKS.map((weeks) => (
          <li key={weeks}>
            <Link
              href={`${path}?weeks=${weeks}` as Route}
              aria-current={weeks * 7 === horizonDays ? 'page' : undefined}
              prefetch={false}
            >
              {weeks} weeks
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
