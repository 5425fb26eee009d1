import { count } from '@/app/_shared/format';
import { Breadcrumb, ButtonLink, TitleBlock } from '@/app/_shared/ui';
import type { LineRow } from '@/db/queries/jobs';

/** A line of a job that is closed: it needs nothing any more. */
export function ClosedLine({ line }: { readonly line: LineRow }) {
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here={line.id} />
      <TitleBlock
        title={`Line ${line.id}`}
        lead={`Job ${line.jobId} is ${line.jobStatus}. Of ${count(line.ends, 'end')}, ${line.goodCones} cones and ${line.goodThreads} threads were logged good.`}
        actions={<ButtonLink href={`/plan/jobs/${encodeURIComponent(line.jobId)}`}>Open the job</ButtonLink>}
      />
    </div>
  );
}
