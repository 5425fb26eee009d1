import Link from 'next/link';
import { dayText } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import type { FluidJobUse } from '@/db/queries/fluids';

/** The last jobs that the bottle was used on: as information, not as a verdict. */
export function JobsPanel({
  jobs,
  today,
}: {
  readonly jobs: readonly FluidJobUse[];
  readonly today: string;
}) {
  return (
    <Panel title="Last used on">
      {jobs.length === 0 ? (
        <p className="quiet">
          No job is written down for it: neither issued for one nor named in the cut log.
        </p>
      ) : (
        <ul>
          {jobs.map(({ jobLineId, onDay, how }) => (
            <li key={`${jobLineId} ${how}`}>
              <Link href={`/plan/lines/${encodeURIComponent(jobLineId)}`} prefetch={false}>
                {jobLineId}
              </Link>
              , {how === 'cut' ? 'named in the cut log' : 'issued for it'} {dayText(onDay, today)}
            </li>
          ))}
        </ul>
      )}
      <p className="fine">Listed for information. Whether anything follows from it is for quality to say.</p>
    </Panel>
  );
}
