import Link from 'next/link';
import { Panel } from '@/app/_shared/ui';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { Decision } from '@/lib/outlook/decisions';
import type { Outlook } from '@/lib/outlook/outlook';
import { DecisionItem } from './decision-item';
import styles from './today.module.css';

interface DecisionListProps {
  readonly outlook: Outlook;
  readonly rows: readonly PlanRow[];
  readonly decisions: readonly Decision[];
  readonly lineLabel: (lineId: string) => string;
}

/** More than this nobody reads in the morning. */
const SHOWN = 6;

/** What else needs a decision, in the order of what it costs to ignore it. */
export function DecisionList({ outlook, rows, decisions, lineLabel }: DecisionListProps) {
  if (decisions.length === 0) return null;
  const more = decisions.length - SHOWN;
  return (
    <Panel title="Needs a decision">
      <ol className={styles.decisions}>
        {decisions.slice(0, SHOWN).map((decision) => (
          <DecisionItem
            key={keyOf(decision)}
            decision={decision}
            outlook={outlook}
            rows={rows}
            lineLabel={lineLabel}
          />
        ))}
      </ol>
      {more > 0 ? (
        <p className="quiet">
          And {more} more: <Link href="/plan">the plan</Link> and <Link href="/tools">the tools</Link> hold
          them all.
        </p>
      ) : null}
    </Panel>
  );
}

function keyOf(decision: Decision): string {
  if (decision.kind === 'line') return decision.line.id;
  return decision.kind === 'order-late' ? decision.order.id : decision.tool.id;
}
