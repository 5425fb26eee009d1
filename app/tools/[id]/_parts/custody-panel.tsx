import Link from 'next/link';
import { newStamp } from '@/app/_server/entry-stamp';
import { Cautions } from '@/app/_shared/cautions';
import { count } from '@/app/_shared/format';
import { ButtonLink, Panel } from '@/app/_shared/ui';
import type { ToolRow } from '@/db/queries/tools';
import { isEdgeKind } from '@/lib/outlook/edge-histories';
import type { Outlook } from '@/lib/outlook/outlook';
import { endsToMake } from '@/lib/outlook/plan-facts';
import type { Person } from '@/lib/shop/noun';
import type { Part } from '@/lib/shop/part';
import { servesSize } from '@/lib/shop/serves-size';
import { CALIBRATED_ROLES, type ToolState } from '@/lib/shop/vocabulary';
import { FluidLevelForm, OpenFluidForm } from './care-forms';
import { EndEdgeForm, IssueForm, MoveForm, RenewForm, ReturnForm } from './custody-forms';
import type { CutInHand } from './cut-in-hand';
import { ScrapForm } from './scrap-form';

interface CustodyPanelProps {
  readonly cut: CutInHand | undefined;
  readonly outlook: Outlook;
  readonly tool: ToolRow;
  readonly part: Part;
  readonly people: readonly Person[];
  readonly cutting: boolean;
}

/** Where the tool goes next: issue or return first, then what is rarer behind a fold. */
export function CustodyPanel({ outlook, tool, part, cut, people, cutting }: CustodyPanelProps) {
  const about = { toolId: tool.id, stamp: newStamp() };
  const { today } = outlook.facts;
  const regrinds = outlook.facts.edges.filter((edge) => edge.toolId === tool.id).length;
  const usable = !tool.firstOffOwed && (cutting || !isEdgeKind(tool.role));
  const lines = outlook.facts.lines.filter(
    (line) => endsToMake(line) > 0 && servesSize(part, line.connectionId),
  );
  return (
    <Panel title="Custody">
      <div className="stack">
        {tool.role === 'blade' && (tool.state === 'in-crib' || tool.state === 'issued') ? (
          <Cautions at="blade" />
        ) : null}
        {tool.dueOnDay !== null && tool.dueOnDay < today ? <Cautions at="gauge" /> : null}
        {tool.state === 'in-crib' && usable ? (
          <IssueForm
            {...about}
            people={people.map(({ id, name }) => ({ value: id, label: name }))}
            lines={lines.map((line) => ({
              value: line.id,
              label: `${line.id}: ${count(endsToMake(line), 'end')}`,
            }))}
            lineId={cut?.line?.id ?? lines[0]?.id ?? ''}
          />
        ) : null}
        {tool.state === 'issued' ? <ReturnForm {...about} /> : null}
        {tool.state === 'regrind' && tool.role === 'blade' ? (
          <>
            <Cautions at="regrind" />
            {regrinds > part.regrindLimit ? (
              <ScrapForm {...about} regrindLimit={part.regrindLimit} />
            ) : (
              <RenewForm {...about} today={today} />
            )}
          </>
        ) : null}
        {tool.state === 'scrapped' ? (
          <p>Scrapped: {reasonWords(tool.stateReason)}. If that was a mistake, take the entry back below.</p>
        ) : (
          <RarerForms {...{ outlook, tool, part, cut, people, cutting }} />
        )}
      </div>
    </Panel>
  );
}

function RarerForms({ outlook, tool, part, cutting }: CustodyPanelProps) {
  const about = { toolId: tool.id, today: outlook.facts.today };
  const edgeNo = outlook.facts.edges.filter((edge) => edge.toolId === tool.id).length;
  return (
    <>
      {tool.role === 'fluid' ? (
        <details open>
          <summary>Level and opening</summary>
          <div className="stack">
            <FluidLevelForm {...about} stamp={newStamp()} levelMl={tool.levelMl} />
            {tool.openedOnDay === null ? <OpenFluidForm {...about} stamp={newStamp()} /> : null}
            <Cautions at="fluid" only={['fluid-skin', 'fluid-sds']} />
            <p>
              <Link href={`/fluid/${encodeURIComponent(tool.id)}`}>Its lot, label, drops and disposal</Link>
            </p>
          </div>
        </details>
      ) : null}
      {CALIBRATED_ROLES.includes(tool.role) ? (
        <ButtonLink href={`/gauges/${encodeURIComponent(tool.id)}`}>
          Certificates, checks, interval
        </ButtonLink>
      ) : null}
      {cutting && tool.state !== 'lost' ? (
        <details>
          <summary>Take the edge out of service</summary>
          <Cautions at="broken" />
          <EndEdgeForm
            toolId={tool.id}
            stamp={newStamp()}
            canRegrind={part.role === 'blade' && edgeNo <= part.regrindLimit}
          />
        </details>
      ) : null}
      <details>
        <summary>Move it elsewhere</summary>
        <MoveForm toolId={tool.id} stamp={newStamp()} to={moves(tool, part)} />
      </details>
    </>
  );
}

function moves(tool: ToolRow, part: Part): ToolState[] {
  const all: ToolState[] = ['in-crib', 'quarantined', 'calibration', 'regrind', 'lost', 'scrapped'];
  return all.filter((to) => {
    if (to === tool.state) return false;
    if (to === 'in-crib') return tool.state !== 'issued';
    if (to === 'calibration') return CALIBRATED_ROLES.includes(tool.role);
    return to !== 'regrind' || part.role === 'blade';
  });
}

/** The reason as it stands in a sentence: its own full stop left out. */
function reasonWords(reason: string): string {
  return reason === '' ? 'no reason written down' : reason.replace(/[.\s]+$/, '');
}
