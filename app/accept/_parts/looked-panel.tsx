import type { Route } from 'next';
import Link from 'next/link';
import { count, listWords } from '@/app/_shared/format';
import { Panel, Table, ToolId } from '@/app/_shared/ui';
import type { HeldEnds, LineStanding } from '@/lib/acceptance/line-standing';
import { lookOutcome } from '@/lib/acceptance/look-outcome';
import type { AcceptanceRecord } from '@/lib/ledger/acceptance-history';
import { CHECK_KIND_LABEL } from '@/lib/shop/acceptance';
import { REJECT_CAUSES, ROLE_LABEL } from '@/lib/shop/vocabulary';

interface LookedPanelProps {
  readonly lineId: string;
  readonly looks: readonly AcceptanceRecord[];
  readonly standing: LineStanding;
  readonly personName: (id: string) => string;
  readonly moment: (ms: number) => string;
}

/** What was looked at on the line, newest first; ends that cannot be released stand on top with the way out. */
export function LookedPanel({ lineId, looks, standing, personName, moment }: LookedPanelProps) {
  return (
    <>
      {standing.held.length > 0 ? (
        <Panel title="Not releasable" aside={count(endsOf(standing.held), 'end')}>
          <ul className="stack">
            {standing.held.map((held) => (
              <li key={`${held.acceptanceId} ${held.why}`}>
                <HeldWords held={held} lineId={lineId} />
              </li>
            ))}
          </ul>
        </Panel>
      ) : null}
      <Panel title="Looked at so far" aside={looks.length === 0 ? undefined : count(looks.length, 'look')}>
        {looks.length === 0 ? (
          <p className="quiet">Nothing yet. The first end is the first-off.</p>
        ) : (
          <Table
            caption="Looks at the ends of this line, newest first"
            rows={looks.toReversed()}
            rowKey={({ id }) => id}
            columns={[
              { key: 'ends', header: 'Ends', lead: true, cell: endsWords },
              { key: 'result', header: 'Result', cell: resultWords },
              { key: 'with', header: 'With', cell: (look) => <Gauges look={look} /> },
              {
                key: 'who',
                header: 'Who, when',
                cell: (look) => `${personName(look.personId)}, ${moment(look.gaugedAtMs)}`,
              },
            ]}
          />
        )}
      </Panel>
    </>
  );
}

function HeldWords({ held, lineId }: { readonly held: HeldEnds; readonly lineId: string }) {
  if (held.why === 'suspect')
    return (
      <>
        {count(held.ends, 'end')} suspect:{' '}
        {held.recallIds.map((id) => (
          <Link key={id} href={`/recalls/${encodeURIComponent(id)}`}>
            recall {id}
          </Link>
        ))}
      </>
    );
  const missing = listWords(held.gaugesMissing.map((role) => ROLE_LABEL[role]));
  const again = new URLSearchParams({ again: held.acceptanceId });
  return (
    <>
      {count(held.ends, 'end')}: no {missing} recorded.{' '}
      <Link href={`/accept/${encodeURIComponent(lineId)}?${again}` as Route}>Gauge again now</Link>
    </>
  );
}

function endsOf(held: readonly HeldEnds[]): number {
  return held.reduce((sum, { ends }) => sum + ends, 0);
}

function endsWords({ endCount, firstEndNo, endMarks, regaugesId, decision }: AcceptanceRecord): string {
  if (endMarks.length > 0) return endMarks.join(', ');
  const ends = count(endCount, 'end');
  if (regaugesId !== null) return `${ends}, gauged again`;
  if (firstEndNo === null || decision === 'refused') return ends;
  return endCount === 1 ? `end ${firstEndNo}` : `ends ${firstEndNo} to ${firstEndNo + endCount - 1}`;
}

function resultWords(look: AcceptanceRecord): string {
  const { cause, checkKind, gaugesMissing } = look;
  const which = CHECK_KIND_LABEL[checkKind];
  const outcome = lookOutcome(look);
  if (outcome === 'refused')
    return `refused: ${REJECT_CAUSES.find(({ code }) => code === cause)?.label ?? cause}`;
  if (outcome === 'passed') return `accepted, ${which}`;
  const missing = `no ${listWords(gaugesMissing.map((role) => ROLE_LABEL[role]))} recorded`;
  return checkKind === 'first-off' || checkKind === 'last-off'
    ? `looked at, ${missing}: does not count as a ${which}`
    : `${which}, ${missing}: not releasable`;
}

function Gauges({ look }: { readonly look: AcceptanceRecord }) {
  const used = look.gauges.filter(({ verdict }) => verdict !== 'not-used');
  if (used.length === 0) return <span className="quiet">no gauge recorded</span>;
  return (
    <span className="cluster">
      {used.map(({ toolId, role }) => (
        <Link key={`${role} ${toolId}`} href={`/tools/${encodeURIComponent(toolId)}`} prefetch={false}>
          <ToolId id={toolId} />
        </Link>
      ))}
    </span>
  );
}
