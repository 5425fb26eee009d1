import { count } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { LineItem } from '@/app/plan/_parts/line-item';
import styles from '@/app/plan/_parts/plan.module.css';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { LineRow } from '@/db/queries/jobs';

interface JobLinesProps {
  readonly lines: readonly LineRow[];
  readonly rows: readonly PlanRow[];
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
}

/** How the lines of an open job stand. */
export function JobLines({ lines, rows, today, lineLabel }: JobLinesProps) {
  if (rows.length === 0) return null;
  const worst = rows.find(({ verdict }) => verdict.verdict === 'cannot-make-now');
  return (
    <Panel title="Lines" aside={count(lines.length, 'line')}>
      <ul className={styles.lines}>
        {rows.map((row) => (
          <LineItem key={row.line.id} row={row} today={today} lineLabel={lineLabel} alarm={row === worst} />
        ))}
      </ul>
    </Panel>
  );
}
