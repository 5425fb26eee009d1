import { Panel } from '@/app/_shared/ui';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { WeekList } from '@/lib/issue-order/week-list';
import styles from './week.module.css';
import { WeekLine } from './week-line';

interface IssueListProps {
  readonly list: WeekList;
  readonly rows: ReadonlyMap<string, PlanRow>;
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
}

/** The lines of the week in the order in which they begin. */
export function IssueList({ list, rows, today, lineLabel }: IssueListProps) {
  return (
    <Panel title="To issue">
      <ul className={styles.lines}>
        {list.lines.flatMap(({ lineId, proposals }) => {
          const row = rows.get(lineId);
          const shared = { today, lineLabel };
          return row ? [<WeekLine key={lineId} row={row} proposals={proposals} {...shared} />] : [];
        })}
      </ul>
    </Panel>
  );
}
