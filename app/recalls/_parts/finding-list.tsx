import type { Route } from 'next';
import Link from 'next/link';
import { dayText } from '@/app/_shared/format';
import type { OpenFinding } from '@/db/queries/gauge-looks';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';

/** Gauges that failed, each with the way to its recall. */
export function FindingList({
  findings,
  today,
}: {
  readonly findings: readonly OpenFinding[];
  readonly today: string;
}) {
  return (
    <ul className="stack">
      {findings.map(({ gaugeId, role, entryId, kind, onDay }) => (
        <li key={entryId}>
          {gaugeId} ({ROLE_LABEL[role]}){' '}
          {kind === 'calibration' ? 'was found out at its calibration' : 'failed a check'} on{' '}
          {dayText(onDay, today)}.{' '}
          <Link href={`/recalls/new?${new URLSearchParams({ gauge: gaugeId, entry: entryId })}` as Route}>
            Open the recall
          </Link>
        </li>
      ))}
    </ul>
  );
}
