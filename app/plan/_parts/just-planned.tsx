import Link from 'next/link';
import { count } from '@/app/_shared/format';
import { VerdictMark } from '@/app/_shared/ui';
import { JustDone } from './just-done';
import type { PlanRow } from './plan-rows';

interface JustPlannedProps {
  readonly asked: Readonly<Record<string, string | string[] | undefined>>;
  readonly rows: readonly PlanRow[];
}

/** What the job just entered came to: each of its lines with its verdict, before anything else on the page. */
export function JustPlanned({ asked, rows }: JustPlannedProps) {
  if (typeof asked.closed === 'string')
    return (
      <JustDone entryId={asked.entry}>Job {asked.closed} is closed. Wear already logged stays.</JustDone>
    );
  const mine = rows.filter(({ line }) => line.jobId === asked.job);
  if (mine.length === 0) return null;
  return (
    <JustDone entryId={asked.entry}>
      <p>Job {asked.job} is on the plan.</p>
      <ul>
        {mine.map((row) => (
          <li key={row.line.id}>
            <Link href={`/plan/lines/${encodeURIComponent(row.line.id)}`}>
              {count(row.line.ends, 'end')}, {row.sizeText}, in {row.materialText}
            </Link>{' '}
            <VerdictMark verdict={row.verdict.verdict} />
          </li>
        ))}
      </ul>
    </JustDone>
  );
}
