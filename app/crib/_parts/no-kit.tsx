import { Breadcrumb, ButtonLink, EmptyState, Panel, TitleBlock } from '@/app/_shared/ui';
import type { LineRow } from '@/db/queries/jobs';

/** Why a line has no kit: its job is closed, or its size has no table row. Each with the way out. */
export function NoKit({ line }: { readonly line: LineRow }) {
  const closed = line.jobStatus !== 'open';
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/crib', label: 'Crib' }]} here={`Kit for ${line.id}`} />
      <TitleBlock title={`No kit for ${line.id}`} />
      <Panel>
        <EmptyState
          title={closed ? `Job ${line.jobId} is ${line.jobStatus}` : 'The size has no table row'}
          action={
            closed ? (
              <ButtonLink href={`/plan/jobs/${encodeURIComponent(line.jobId)}`}>Look at the job</ButtonLink>
            ) : (
              <ButtonLink href="/sizes/new">Add the size</ButtonLink>
            )
          }
        >
          {closed
            ? 'Nothing goes out for a job that is closed.'
            : 'A size that nobody has written down from the fitting maker’s manual has no set of tools.'}
        </EmptyState>
      </Panel>
    </div>
  );
}
