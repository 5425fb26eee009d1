import type { Route } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { count, dueText, inDays } from '@/app/_shared/format';
import { ToolId, VerdictMark } from '@/app/_shared/ui';
import { wayLink } from '@/app/_shared/words/way-words';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import { verdictHeadline } from '@/lib/capability/verdict-headline';
import { isByShare } from '@/lib/capability/word-blocker';
import type { Decision } from '@/lib/outlook/decisions';
import type { Outlook } from '@/lib/outlook/outlook';
import { waysOut } from '@/lib/outlook/ways-out';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { capital } from '@/lib/text/capital';
import styles from './today.module.css';

interface DecisionItemProps {
  readonly decision: Decision;
  readonly outlook: Outlook;
  readonly rows: readonly PlanRow[];
  readonly lineLabel: (lineId: string) => string;
}

/** One decision: what it is, when it bites, and the next step as a link. */
export function DecisionItem(props: DecisionItemProps) {
  const { decision } = props;
  if (decision.kind === 'line') return <LineDecision {...props} />;
  return decision.kind === 'order-late' ? <LateOrder {...props} /> : <Lapsing {...props} />;
}

function Item({ mark, what, when, step }: Record<'mark' | 'what' | 'when' | 'step', ReactNode>) {
  return (
    <li>
      <div className={styles.mark}>{mark}</div>
      <div className={styles.what}>{what}</div>
      <div className={styles.when}>{when}</div>
      <div className={`${styles.step} no-print`}>{step}</div>
    </li>
  );
}

function LineDecision({ decision, outlook, rows, lineLabel }: DecisionItemProps) {
  if (decision.kind !== 'line') return null;
  const row = rows.find(({ line }) => line.id === decision.line.id);
  const [blocker] = decision.verdict.blockers;
  if (row === undefined) return null;
  const { today } = outlook.facts;
  const next = blocker && waysOut(blocker, row.line, outlook.facts)[0];
  const link = next && wayLink(next, today);
  const { clearsOnDay } = decision.verdict;
  const by = decision.verdict.blockers.some(isByShare) ? 'sure enough' : 'clears';
  return (
    <Item
      mark={<VerdictMark verdict={decision.verdict.verdict} />}
      what={
        <>
          <Link href={`/plan/lines/${encodeURIComponent(row.line.id)}`} prefetch={false}>
            {verdictHeadline(row.sizeText, decision.verdict)}
          </Link>
          <p className="quiet">
            {capital(lineLabel(row.line.id))}, {count(row.endsToMake, 'end')} in {row.materialText}
          </p>
        </>
      }
      when={
        <>
          starts {inDays(row.line.startOnDay, today)}
          <p className="quiet">
            {clearsOnDay === null ? 'no known date' : `${by} ${inDays(clearsOnDay, today)}`}
          </p>
        </>
      }
      step={
        link ? (
          <Link href={link.href} prefetch={false}>
            {link.label}
          </Link>
        ) : null
      }
    />
  );
}

function LateOrder({ decision, outlook }: DecisionItemProps) {
  if (decision.kind !== 'order-late') return null;
  const { order } = decision;
  const { parts, today } = outlook.facts;
  const name = parts.find(({ id }) => id === order.partId)?.name ?? order.partId;
  return (
    <Item
      mark={<VerdictMark verdict="at-risk">order late</VerdictMark>}
      what={
        <>
          {name}
          <p className="quiet">
            Order {order.id}, {order.quantity - order.receivedQuantity} to come. The plan no longer counts on
            it.
          </p>
        </>
      }
      when={dueText(order.expectedOnDay, today)}
      step={
        <Link href={`/plan/orders#${encodeURIComponent(order.id)}` as Route} prefetch={false}>
          Ask, and write down the new day
        </Link>
      }
    />
  );
}

function Lapsing({ decision, outlook, lineLabel }: DecisionItemProps) {
  if (decision.kind !== 'gauge-due' && decision.kind !== 'fluid-expiring') return null;
  const { tool, onDay, lineIds, kind } = decision;
  const { today, parts } = outlook.facts;
  const name = parts.find(({ id }) => id === tool.partId)?.name ?? ROLE_LABEL[tool.role];
  const [line] = lineIds;
  const more = lineIds.length - 1;
  const href = `/${kind === 'gauge-due' ? 'gauges' : 'fluid'}/${encodeURIComponent(tool.id)}` as Route;
  return (
    <Item
      mark={<VerdictMark verdict="at-risk">{markWord(kind, onDay < today)}</VerdictMark>}
      what={
        <>
          <Link href={href} prefetch={false}>
            <ToolId id={tool.id} />
          </Link>{' '}
          {name}
          <p className="quiet">
            {line === undefined
              ? 'No open line needs it after that day.'
              : `${capital(lineLabel(line))}${more > 0 ? ` and ${count(more, 'other')}` : ''} could need it after that day; another serves so far.`}
          </p>
        </>
      }
      when={kind === 'gauge-due' ? dueText(onDay, today) : lastDayWords(onDay, today)}
      step={
        <Link href={href} prefetch={false}>
          {kind === 'gauge-due' ? 'Send it, or record its calibration' : 'See the bottle'}
        </Link>
      }
    />
  );
}

function lastDayWords(onDay: string, today: string): string {
  return onDay < today ? `its day was ${inDays(onDay, today)}` : `use by ${inDays(onDay, today)}`;
}

function markWord(kind: 'gauge-due' | 'fluid-expiring', over: boolean): string {
  if (kind === 'gauge-due') return over ? 'calibration over' : 'calibration due';
  return over ? 'out of date' : 'expires';
}
