import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { Verdict } from '@/lib/capability/line-verdict';

/** An open job in one row. */
export interface JobSummary {
  readonly jobId: string;
  readonly title: string;
  readonly sizes: readonly string[];
  readonly endsToMake: number;
  /** The last due day of its lines. */
  readonly dueOnDay: string;
  /** The worst among its lines that are not all made. */
  readonly verdict: Verdict;
}

const WORST_FIRST: readonly Verdict[] = ['cannot-make-now', 'at-risk', 'can-make'];

/** The jobs of these lines, in the order in which the first line of each is served. */
export function jobSummaries(rows: readonly PlanRow[]): JobSummary[] {
  const jobs = new Map<string, PlanRow[]>();
  for (const row of rows) {
    const mine = jobs.get(row.line.jobId);
    if (mine === undefined) jobs.set(row.line.jobId, [row]);
    else mine.push(row);
  }
  return [...jobs].map(([jobId, mine]) => {
    const verdicts = mine.filter(({ endsToMake }) => endsToMake > 0).map(({ verdict }) => verdict.verdict);
    return {
      jobId,
      title: mine[0]?.line.jobTitle ?? '',
      sizes: [...new Set(mine.map(({ sizeText }) => sizeText))],
      endsToMake: mine.reduce((sum, row) => sum + row.endsToMake, 0),
      dueOnDay:
        mine
          .map(({ line }) => line.dueOnDay)
          .sort()
          .at(-1) ?? '',
      verdict: WORST_FIRST.find((verdict) => verdicts.includes(verdict)) ?? 'can-make',
    };
  });
}
