import Link from 'next/link';
import { whatIfHref } from '@/app/plan/what-if/_parts/asked-changes';

/** Before a job is cancelled: what the plan would be without it, and so who was waiting for its tools. */
export function WhoWaitsLink({ lineIds }: { readonly lineIds: readonly string[] }) {
  return (
    <p className="no-print">
      <Link href={whatIfHref(lineIds.map((lineId) => ({ kind: 'drop-line', lineId })))} prefetch={false}>
        See first who is waiting for its tools
      </Link>
    </p>
  );
}
