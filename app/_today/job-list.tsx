import Link from 'next/link';
import { count, dayText } from '@/app/_shared/format';
import { Panel, Table, VerdictMark } from '@/app/_shared/ui';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { Verdict } from '@/lib/capability/line-verdict';
import { jobSummaries } from './job-summaries';

/** More than this belongs on the plan. */
const SHOWN = 8;

/** What each verdict says of a whole job. */
const WORD: Record<Verdict, string> = {
  'can-make': 'can make',
  'at-risk': 'at risk',
  'cannot-make-now': 'not all of it now',
};

/** The open jobs, next to start first, each with the worst verdict among its lines. */
export function JobList({ rows, today }: { readonly rows: readonly PlanRow[]; readonly today: string }) {
  const jobs = jobSummaries(rows);
  if (jobs.length === 0) return null;
  return (
    <Panel title="Open jobs" aside={<Link href="/plan">The whole plan</Link>}>
      <Table
        caption="Open jobs, next to start first"
        rows={jobs.slice(0, SHOWN)}
        rowKey={({ jobId }) => jobId}
        columns={[
          {
            key: 'job',
            header: 'Job',
            lead: true,
            cell: ({ jobId, title }) => (
              <>
                <Link href={`/plan/jobs/${encodeURIComponent(jobId)}`} prefetch={false}>
                  {jobId}
                </Link>{' '}
                <span className="quiet">{title}</span>
              </>
            ),
          },
          { key: 'sizes', header: 'Sizes', cell: ({ sizes }) => sizes.join(', ') },
          {
            key: 'ends',
            header: 'To make',
            numeric: true,
            cell: ({ endsToMake }) => (endsToMake === 0 ? 'all made' : count(endsToMake, 'end')),
          },
          {
            key: 'due',
            header: 'Due',
            cell: ({ dueOnDay }) => <span className="num">{dayText(dueOnDay, today)}</span>,
          },
          {
            key: 'verdict',
            header: 'Verdict',
            cell: ({ verdict, endsToMake }) =>
              endsToMake === 0 ? (
                'to be closed'
              ) : (
                <VerdictMark verdict={verdict}>{WORD[verdict]}</VerdictMark>
              ),
          },
        ]}
      />
      {jobs.length > SHOWN ? (
        <p className="quiet">And {count(jobs.length - SHOWN, 'job')} more on the plan.</p>
      ) : null}
    </Panel>
  );
}
