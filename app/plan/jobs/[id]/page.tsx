import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { count, inDays } from '@/app/_shared/format';
import { Breadcrumb, Panel, TitleBlock } from '@/app/_shared/ui';
import { lineLabeller, planRows } from '@/app/plan/_parts/plan-rows';
import { findJob, listLinesOfJob } from '@/db/queries/jobs';
import { CloseJobForm } from '../_parts/close-job-form';
import { blankLine, draftOf } from '../_parts/job-draft';
import { JobForm } from '../_parts/job-form';
import { JobLines } from '../_parts/job-lines';
import { jobOptions } from '../_parts/job-options';
import { WhoWaitsLink } from '../_parts/who-waits-link';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/plan/jobs/[id]'>): Promise<Metadata> {
  return { title: `Job ${decodeURIComponent((await params).id)}` };
}

const SPARE_LINES = 2;

/** One job: how its lines stand, closing it, and changing it. A closed job is opened again by saving it. */
export default async function JobPage({ params }: PageProps<'/plan/jobs/[id]'>) {
  const { outlook, db, asOfMs } = await shopView();
  const job = findJob(db, decodeURIComponent((await params).id));
  if (job === undefined) notFound();
  const { today, connections } = outlook.facts;
  const lines = listLinesOfJob(db, job.id);
  const drafts = lines.map((line) =>
    draftOf(
      line,
      connections.map(({ id }) => id),
    ),
  );
  const next = Math.max(0, ...lines.map(({ lineNo }) => lineNo)) + 1;
  const open = job.status === 'open';
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here={job.id} />
      <TitleBlock
        title={`Job ${job.id}`}
        lead={job.title === '' ? `${count(lines.length, 'line')}.` : job.title}
        cells={[
          { label: 'Stands', value: job.status },
          { label: 'Ends', value: lines.reduce((sum, { ends }) => sum + ends, 0) },
          {
            label: 'Last due',
            value: inDays(
              lines
                .map(({ dueOnDay }) => dueOnDay)
                .sort()
                .at(-1) ?? today,
              today,
            ),
          },
        ]}
      />
      <JobLines lines={lines} rows={planRows(outlook, lines)} today={today} lineLabel={lineLabeller(lines)} />
      {open ? null : (
        <p className="quiet">This job is {job.status}. Saving it below puts it back on the plan.</p>
      )}
      <JobForm
        key={`${job.id} ${drafts.length}`}
        stamp={newStamp()}
        job={job}
        lines={drafts}
        spare={Array.from({ length: SPARE_LINES }, (_, at) => blankLine(next + at, today))}
        {...jobOptions(outlook.facts, drafts)}
      />
      {open ? (
        <Panel title="Close the job">
          <WhoWaitsLink lineIds={lines.map(({ id }) => id)} />
          <CloseJobForm jobId={job.id} stamp={newStamp()} />
        </Panel>
      ) : null}
    </div>
  );
}
