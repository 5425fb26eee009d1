import Link from 'next/link';
import { inDays } from '@/app/_shared/format';
import { ToolId } from '@/app/_shared/ui';
import { doesSentence, nextSentence, whyChosen, whyNot } from '@/app/_shared/words/issue-words';
import type { ToolProposal } from '@/lib/issue-order/propose-tools';
import styles from './week.module.css';

interface ToolForLineProps {
  readonly proposal: ToolProposal;
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
}

const NOUN = { die: 'Die', blade: 'Blade' } as const;

/** The tool proposed for one line and kind of edge: which, why, what follows it, and why not the others. */
export function ToolForLine({ proposal, today, lineLabel }: ToolForLineProps) {
  const { kind, chosen, runnersUp, ends } = proposal;
  const next = nextSentence(proposal);
  return (
    <section className={styles.tool} aria-label={`${NOUN[kind]} for ${lineLabel(proposal.lineId)}`}>
      <p className="fine">{NOUN[kind]}</p>
      {chosen === null ? (
        <NoTool proposal={proposal} today={today} lineLabel={lineLabel} />
      ) : (
        <>
          <p className={styles.chosen}>
            <Link href={`/tools/${encodeURIComponent(chosen.toolId)}`} prefetch={false}>
              <ToolId id={chosen.toolId} />
            </Link>
            <span className={styles.tick} aria-hidden="true" />
          </p>
          <p>Alone, after the lines before it: {doesSentence(chosen, ends)}</p>
          <p className="quiet">{whyChosen(chosen.why)}</p>
        </>
      )}
      {next === '' ? null : <p>{next}</p>}
      {runnersUp.length === 0 ? null : (
        <details className="no-print">
          <summary>Why not another</summary>
          <ul>
            {runnersUp.map((tool) => (
              <li key={tool.toolId}>
                <Link href={`/tools/${encodeURIComponent(tool.toolId)}`} prefetch={false}>
                  <ToolId id={tool.toolId} />
                </Link>{' '}
                {whyNot(tool, lineLabel)}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function NoTool({ proposal, today, lineLabel }: ToolForLineProps) {
  const { handOver, kind } = proposal;
  if (handOver === null)
    return (
      <p>
        <b>None here fits.</b> <Link href="/plan/orders">See the orders</Link>
      </p>
    );
  const { toolId, onDay, fromLineId } = handOver;
  return (
    <p>
      <b>No {kind} is free.</b> <ToolId id={toolId} />{' '}
      {fromLineId === null
        ? `can be had ${inDays(onDay, today)}.`
        : `is with ${lineLabel(fromLineId)} first; hand it over ${inDays(onDay, today)}.`}
    </p>
  );
}
