import { count } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { LineItem } from './line-item';
import styles from './plan.module.css';
import type { PlanRow } from './plan-rows';

interface LineGroupProps {
  readonly title: string;
  readonly rows: readonly PlanRow[];
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
  readonly restsOn: (row: PlanRow) => readonly string[];
  readonly alarmLineId: string | undefined;
}

/** Lines with the same verdict, the one that starts first on top. Nothing at all for an empty group. */
export function LineGroup({ title, rows, today, lineLabel, restsOn, alarmLineId }: LineGroupProps) {
  if (rows.length === 0) return null;
  return (
    <Panel title={title} aside={count(rows.length, 'line')}>
      <ul className={styles.lines}>
        {rows.map((row) => (
          <LineItem
            key={row.line.id}
            row={row}
            today={today}
            lineLabel={lineLabel}
            restsOn={restsOn}
            alarm={row.line.id === alarmLineId}
          />
        ))}
      </ul>
    </Panel>
  );
}
