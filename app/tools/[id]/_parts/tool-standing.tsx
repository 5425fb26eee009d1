import type { Route } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { count, dayText } from '@/app/_shared/format';
import { Notice } from '@/app/_shared/ui';
import type { ToolRow } from '@/db/queries/tools';
import { isBetterRetired } from '@/lib/kit/better-retired';

/** What stands between this tool and the next job, and where it is just now: only what is so. */
export function ToolStanding({ tool, today }: { readonly tool: ToolRow; readonly today: string }) {
  const { reservation, adjustments, pieces } = tool;
  const said: { key: string; title: string; more: ReactNode }[] = [
    ...(tool.firstOffOwed && tool.state !== 'scrapped'
      ? [
          {
            key: 'first',
            title: 'First-off owed.',
            more: 'It goes out again when its first end has passed the gauges.',
          },
        ]
      : []),
    ...(pieces === 'owed'
      ? [{ key: 'pieces', title: 'Pieces owed.', more: 'Something broke off it and has not been found.' }]
      : []),
    ...(pieces === 'not-found'
      ? [{ key: 'lost', title: 'Pieces not all found.', more: 'The search was ended by a lead or quality.' }]
      : []),
    ...(reservation === null
      ? []
      : [
          {
            key: 'kept',
            title: `Kept for ${reservation.jobLineId}`,
            more: `through ${dayText(reservation.untilDay, today)}${reservation.untilDay < today ? '; that day is over, so anyone may take it' : ''}.`,
          },
        ]),
    ...(tool.kitId === null
      ? []
      : [
          {
            key: 'kit',
            title: 'Out in a kit:',
            more: (
              <Link href={`/crib/kits/${encodeURIComponent(tool.kitId)}` as Route}>for {tool.jobLineId}</Link>
            ),
          },
        ]),
    ...(adjustments === 0
      ? []
      : [
          {
            key: 'adjusted',
            title: `Adjusted ${count(adjustments, 'time')}.`,
            more: isBetterRetired(adjustments)
              ? 'Better retired: adjusting does not give life back.'
              : 'Its life goes on counting.',
          },
        ]),
  ];
  if (said.length === 0) return null;
  return (
    <div className="stack-tight">
      {said.map(({ key, title, more }) => (
        <Notice key={key} level="notice" title={title}>
          {more}
        </Notice>
      ))}
    </div>
  );
}
