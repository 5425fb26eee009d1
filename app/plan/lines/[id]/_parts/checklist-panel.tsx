import Link from 'next/link';
import type { ReactNode } from 'react';
import { count, dayText, floorEnds } from '@/app/_shared/format';
import { ComingMark, Panel, Table, ToolId, VerdictMark } from '@/app/_shared/ui';
import { comingWords } from '@/app/plan/_parts/coming-words';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { NeedPhase } from '@/lib/capability/complete-set';
import type { NeedCheck } from '@/lib/capability/set-checklist';
import { wordBlocker } from '@/lib/capability/word-blocker';
import type { Outlook } from '@/lib/outlook/outlook';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { capital } from '@/lib/text/capital';
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
  const coming = checks.filter(({ state }) => state === 'coming').length;
  const aside = `${met} of ${checks.length} there${coming > 0 ? `, ${coming} coming` : ''}`;
  return (
    <Panel title="Complete set" aside={aside}>
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
                <NeedTools check={check} row={row} outlook={outlook} lineLabel={lineLabel} />
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
  if (check.state === 'coming')
    return <ComingMark>{check.coming[0]?.toolId == null ? 'on order' : 'coming back'}</ComingMark>;
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
  lineLabel,
}: Omit<ChecklistPanelProps, 'checks'> & { check: NeedCheck }) {
  const { toolIds, coming } = check;
  const { today } = outlook.facts;
  const away = new Map(coming.map((piece) => [piece.toolId, comingWords(piece, today, lineLabel)]));
  const hereFirst = [...toolIds].sort((a, b) => Number(away.has(a)) - Number(away.has(b)));
  const onOrder = onOrderWords(check, today);
  if (toolIds.length === 0 && onOrder === '') return null;
  const more = toolIds.length - NAMED;
  return (
    <ul className={styles.tools}>
      {hereFirst.slice(0, NAMED).map((toolId) => (
        <li key={toolId}>
          <Link
            href={`/tools/${encodeURIComponent(toolId)}?line=${encodeURIComponent(row.line.id)}`}
            prefetch={false}
          >
            <ToolId id={toolId} />
          </Link>
          {away.has(toolId) ? <Away isNeeded={check.state === 'coming'}>: {away.get(toolId)}</Away> : null}
          <span className="quiet">{left(outlook, toolId, row)}</span>
        </li>
      ))}
      {more > 0 ? <li className="quiet">and {more} more</li> : null}
      {onOrder === '' ? null : <li>{onOrder}</li>}
    </ul>
  );
}

/** Where a tool is until it comes: plain to see where the need rests on it, quiet for a spare. */
function Away({ isNeeded, children }: { readonly isNeeded: boolean; readonly children: ReactNode }) {
  return isNeeded ? <b>{children}</b> : <span className="quiet">{children}</span>;
}

/** "2 pieces on order, the first sure enough by Wed 2 Dec"; empty where none comes in time. */
function onOrderWords({ onOrderCount, coming }: NeedCheck, today: string): string {
  const first = coming.find(({ toolId }) => toolId === null);
  if (onOrderCount === 0 || first === undefined) return '';
  const which = onOrderCount === 1 ? '' : 'the first ';
  return `${count(onOrderCount, 'piece')} on order, ${which}sure enough by ${dayText(first.fromDay, today)}`;
}

/** What an edge has left by itself today, before any line, in ends of this one; empty for what has no edge. */
function left(outlook: Outlook, toolId: string, { line }: PlanRow): string {
  const forecast = outlook.forecast(toolId, { connectionId: line.connectionId, materialId: line.materialId });
  if (forecast === undefined) return '';
  const safe = count(floorEnds(forecast.safeEnds), 'end');
  return `: ${safe} safe, ${floorEnds(forecast.likelyEnds)} likely, alone, today`;
}
