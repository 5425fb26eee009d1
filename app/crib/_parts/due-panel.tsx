import Link from 'next/link';
import { Panel, ToolId } from '@/app/_shared/ui';
import type { ToolRow } from '@/db/queries/tools';
import styles from './crib.module.css';

/** What lies at the counter and waits for somebody: pieces to be found, first-offs owed, tools kept for a job. */
export function DuePanel({ tools }: { readonly tools: readonly ToolRow[] }) {
  const waiting = [
    ...tools.filter(({ pieces }) => pieces === 'owed').map((tool) => [tool, 'pieces to be found'] as const),
    ...tools
      .filter(({ firstOffOwed, state }) => firstOffOwed && state !== 'scrapped' && state !== 'lost')
      .map((tool) => [tool, 'first-off to be gauged'] as const),
    ...tools.flatMap((tool) =>
      tool.reservation === null || tool.state !== 'in-crib'
        ? []
        : [[tool, `kept for ${tool.reservation.jobLineId} until ${tool.reservation.untilDay}`] as const],
    ),
  ];
  if (waiting.length === 0) return null;
  return (
    <Panel title="Waiting at the counter">
      <ul className={styles.kits}>
        {waiting.map(([tool, what]) => (
          <li key={`${tool.id} ${what}`}>
            <Link href={`/tools/${encodeURIComponent(tool.id)}`} prefetch={false}>
              <ToolId id={tool.id} />
            </Link>
            : {what}
          </li>
        ))}
      </ul>
    </Panel>
  );
}
