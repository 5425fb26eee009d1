import { newStamp } from '@/app/_server/entry-stamp';
import { count, dayText } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { PiecesOwed } from '@/app/crib/_parts/pieces-owed';
import type { ToolRow } from '@/db/queries/tools';
import { isBetterRetired } from '@/lib/kit/better-retired';
import type { Outlook } from '@/lib/outlook/outlook';
import { endsToMake } from '@/lib/outlook/plan-facts';
import type { Part } from '@/lib/shop/part';
import { servesSize } from '@/lib/shop/serves-size';
import type { CutInHand } from './cut-in-hand';
import { AdjustForm, FirstOffForm } from './first-off-forms';
import { firstOffGauges } from './first-off-gauges';
import { FreeForm, KeepForm } from './keep-forms';

interface CarePanelProps {
  readonly outlook: Outlook;
  readonly tool: ToolRow;
  readonly part: Part;
  readonly cut: CutInHand | undefined;
  /** Its edge is in service. */
  readonly cutting: boolean;
}

/** What a tool is owed before it goes out, and who it is kept for: only what applies to it now. */
export function CarePanel({ outlook, tool, part, cut, cutting }: CarePanelProps) {
  const gone = tool.state === 'scrapped' || tool.state === 'lost';
  if (gone) return <PiecesOwed tools={[tool]} />;
  const about = { toolId: tool.id, today: outlook.facts.today };
  const keepable = !['quarantined', 'issued'].includes(tool.state) && tool.reservation === null;
  const adjustable = part.adjustable && tool.role === 'die' && cutting;
  return (
    <>
      <PiecesOwed tools={[tool]} />
      {tool.firstOffOwed ? (
        <Panel title="First-off owed">
          <p className="quiet">
            {tool.role === 'die'
              ? 'Adjusted: gauge its next end with GO and NOT GO before it goes on. Its life is not reset by it.'
              : 'Back from regrind: cut one cone, gauge and blue it before it goes on a job.'}
          </p>
          <FirstOffForm
            {...about}
            stamp={newStamp()}
            gauges={firstOffGauges(outlook.facts, { role: tool.role, connection: cut?.connection })}
          />
        </Panel>
      ) : null}
      {tool.reservation === null && !keepable && !adjustable ? null : (
        <Panel title="Kept, adjusted">
          <div className="stack">
            {tool.reservation === null ? null : <FreeForm {...about} stamp={newStamp()} />}
            {keepable ? <Keep {...{ outlook, tool, part, cut }} /> : null}
            {adjustable ? (
              <details>
                <summary>Opened or closed a touch</summary>
                <div className="stack">
                  {isBetterRetired(tool.adjustments) ? (
                    <p>
                      <b>Better retired.</b> It has been adjusted {count(tool.adjustments, 'time')}; adjusting
                      does not give life back.
                    </p>
                  ) : null}
                  <AdjustForm {...about} stamp={newStamp()} />
                </div>
              </details>
            ) : null}
          </div>
        </Panel>
      )}
    </>
  );
}

function Keep({ outlook, tool, part, cut }: Pick<CarePanelProps, 'outlook' | 'tool' | 'part' | 'cut'>) {
  const { today } = outlook.facts;
  const lines = outlook.facts.lines.filter(
    (line) => endsToMake(line) > 0 && servesSize(part, line.connectionId),
  );
  const first = lines.find(({ id }) => id === cut?.line?.id) ?? lines[0];
  if (first === undefined) return null;
  const isLate = first.dueOnDay < today;
  return (
    <details>
      <summary>Keep it for a job</summary>
      <KeepForm
        toolId={tool.id}
        stamp={newStamp()}
        lines={lines.map(({ id, dueOnDay }) => ({
          value: id,
          label: `${id}: due ${dayText(dueOnDay, today)}`,
        }))}
        lineId={first.id}
        untilDay={isLate ? today : first.dueOnDay}
      />
    </details>
  );
}
