import Link from 'next/link';
import { count, floorEnds } from '@/app/_shared/format';
import { Panel, Table, ToolId, VerdictMark } from '@/app/_shared/ui';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { NeedPhase } from '@/lib/capability/complete-set';
import type { NeedCheck } from '@/lib/capability/set-checklist';
import { wordBlocker } from '@/lib/capability/word-blocker';
import type { Outlook } from '@/lib/outlook/outlook';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import styles from './checklist.module.css';
import { WaysList } from './ways-list';

interface ChecklistPanelProps {
  readonly checks: readonly NeedCheck[];
  readonly row: PlanRow;
  readonly outlook: Outlook;
  readonly lineLabel: (lineId: string) => string;
}

const FOR: Record<NeedPhase, string> = { cut: 'cutting', accept: 'accepting', assemble: 'assembling' };

/** Everything that one end needs, each with the tools that serve it or with what is in the way and the ways out. */
export function ChecklistPanel({ checks, row, outlook, lineLabel }: ChecklistPanelProps) {
  if (checks.length === 0) return null;
  const met = checks.filter(({ state }) => state === 'met').length;
  return (
    <Panel title="Complete set" aside={`${met} of ${checks.length} there`}>
      <Table
        caption="The complete set for this line, in bench order"
        rows={checks}
        rowKey={({ need }) => need.role}
        columns={[
          { key: 'need', header: 'Item', lead: true, cell: ({ need }) => capital(ROLE_LABEL[need.role]) },
          { key: 'for', header: 'For', cell: ({ need }) => FOR[need.phase] },
          { key: 'state', header: 'Stands', cell: (check) => <NeedMark check={check} /> },
          {
            key: 'with',
            header: 'With, or what is in the way',
            cell: (check) => (
              <div className="stack-tight">
                <NeedTools check={check} row={row} outlook={outlook} />
                {check.blockers.map((blocker) => (
                  <p key={blocker.rank}>{wordBlocker(blocker, { lineLabel })}</p>
                ))}
                {check.blockers.length > 0 ? (
                  <WaysList blockers={check.blockers} row={row} outlook={outlook} />
                ) : null}
              </div>
            ),
          },
        ]}
      />
    </Panel>
  );
}

function NeedMark({ check }: { readonly check: NeedCheck }) {
  if (check.state === 'met') return <VerdictMark verdict="can-make">there</VerdictMark>;
  if (check.state === 'at-risk') return <VerdictMark verdict="at-risk">may not last</VerdictMark>;
  const absent = check.blockers.every(({ kind }) => kind === 'missing');
  return <VerdictMark verdict="cannot-make-now">{absent ? 'missing' : 'not usable'}</VerdictMark>;
}

/** How many tools are named before the rest is counted. */
const NAMED = 4;

function NeedTools({
  check,
  row,
  outlook,
}: Pick<ChecklistPanelProps, 'row' | 'outlook'> & { check: NeedCheck }) {
  const { toolIds, onOrderCount } = check;
  if (toolIds.length === 0 && onOrderCount === 0) return null;
  const more = toolIds.length - NAMED;
  return (
    <ul className={styles.tools}>
      {toolIds.slice(0, NAMED).map((toolId) => (
        <li key={toolId}>
          <Link
            href={`/tools/${encodeURIComponent(toolId)}?line=${encodeURIComponent(row.line.id)}`}
            prefetch={false}
          >
            <ToolId id={toolId} />
          </Link>
          <span className="quiet">{left(outlook, toolId, row)}</span>
        </li>
      ))}
      {more > 0 ? <li className="quiet">and {more} more</li> : null}
      {onOrderCount > 0 ? <li className="quiet">{count(onOrderCount, 'piece')} on order, in time</li> : null}
    </ul>
  );
}

/** What an edge has left by itself, in ends of this line; empty for what has no edge. */
function left(outlook: Outlook, toolId: string, { line }: PlanRow): string {
  const forecast = outlook.forecast(toolId, { connectionId: line.connectionId, materialId: line.materialId });
  if (forecast === undefined) return '';
  return `: ${floorEnds(forecast.safeEnds)} ends safe, ${floorEnds(forecast.likelyEnds)} likely`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
