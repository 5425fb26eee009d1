import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { inDays, listWords } from '@/app/_shared/format';
import { Breadcrumb, ButtonLink, TitleBlock } from '@/app/_shared/ui';
import { endsWords } from '@/app/plan/_parts/line-item';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import { SizeWords } from '@/app/plan/_parts/size-drawing';
import { DUTY_LABEL } from '@/lib/shop/duty';
import type { Operation } from '@/lib/shop/vocabulary';

const WORK: Record<Operation, string> = { cone: 'cone', thread: 'thread', assemble: 'assemble' };

/** The head of a line's page: the size drawn to scale, how many ends, when, and the way to its job. */
export function LineHead({ row, today }: { readonly row: PlanRow; readonly today: string }) {
  const { line, connection } = row;
  return (
    <>
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here={line.id} />
      <TitleBlock
        title={<SizeWords connection={connection} connectionId={line.connectionId} />}
        lead={`In ${row.materialText}${line.heat === '' ? '' : `, heat ${line.heat}`}. Job ${line.jobId}${line.jobTitle === '' ? '' : `: ${line.jobTitle}`}.`}
        drawing={connection ? <ConnectionEnd connection={connection} pxPerIn={64} /> : undefined}
        cells={[
          { label: 'Ends', value: endsWords(row) },
          { label: 'Work', value: listWords(line.operations.map((operation) => WORK[operation])) },
          { label: 'Start', value: inDays(line.startOnDay, today) },
          { label: 'Due', value: inDays(line.dueOnDay, today) },
          { label: 'Value', value: line.value === 'precious' ? 'cannot be remade' : 'can be remade' },
          ...(line.duty === undefined || line.duty === 'ordinary'
            ? []
            : [{ label: 'For', value: DUTY_LABEL[line.duty] }]),
        ]}
        actions={
          <ButtonLink href={`/plan/jobs/${encodeURIComponent(line.jobId)}`}>
            Change the dates, or close job {line.jobId}
          </ButtonLink>
        }
      />
    </>
  );
}
