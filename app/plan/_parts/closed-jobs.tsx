import Link from 'next/link';
import { Panel } from '@/app/_shared/ui';

interface ClosedJob {
  readonly id: string;
  readonly title: string;
  readonly status: string;
}

/** Jobs closed lately, so that one closed by mistake is found again. */
export function ClosedJobs({ jobs }: { readonly jobs: readonly ClosedJob[] }) {
  if (jobs.length === 0) return null;
  return (
    <div className="no-print">
      <Panel title="Closed jobs">
        <details>
          <summary>The last {jobs.length} by number</summary>
          <ul>
            {jobs.map(({ id, title, status }) => (
              <li key={id}>
                <Link href={`/plan/jobs/${encodeURIComponent(id)}`} prefetch={false}>
                  {id}
                </Link>{' '}
                {title} <span className="quiet">{status}</span>
              </li>
            ))}
          </ul>
        </details>
      </Panel>
    </div>
  );
}
