import Link from 'next/link';
import { count, dayText } from '@/app/_shared/format';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import { SizeDrawing, SizeWords } from '@/app/plan/_parts/size-drawing';
import type { ToolProposal } from '@/lib/issue-order/propose-tools';
import { ToolForLine } from './tool-for-line';
import styles from './week.module.css';

interface WeekLineProps {
  readonly row: PlanRow;
  readonly proposals: readonly ToolProposal[];
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
}

/** One line of the week with the tools that go out for it. */
export function WeekLine({ row, proposals, today, lineLabel }: WeekLineProps) {
  const { line, connection } = row;
  return (
    <li className={styles.line}>
      <div className={styles.what}>
        <SizeDrawing connection={connection} />
        <h3>
          <Link href={`/plan/lines/${encodeURIComponent(line.id)}`} prefetch={false}>
            <SizeWords connection={connection} connectionId={line.connectionId} />
            <span className="vh">, line {line.id}</span>
          </Link>
        </h3>
        <p>
          <b className="num">{count(row.endsToMake, 'end')}</b> in {row.materialText}
        </p>
        <p className="quiet">
          {dayText(line.startOnDay, today)} to {dayText(line.dueOnDay, today)}
        </p>
        <p className="fine">
          Job {line.jobId}
          {line.value === 'precious' ? ', cannot be remade' : ''}
        </p>
      </div>
      {proposals.map((proposal) => (
        <ToolForLine key={proposal.kind} proposal={proposal} today={today} lineLabel={lineLabel} />
      ))}
    </li>
  );
}
