import { Panel } from '@/app/_shared/ui';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import { wordBlocker } from '@/lib/capability/word-blocker';
import type { Outlook } from '@/lib/outlook/outlook';
import { WaysList } from './ways-list';

interface FirstPanelProps {
  readonly row: PlanRow;
  readonly outlook: Outlook;
  readonly lineLabel: (lineId: string) => string;
}

/** What the table lacks for this line, to be mended before anything else. Nothing is guessed in its place. */
export function FirstPanel({ row, outlook, lineLabel }: FirstPanelProps) {
  const blockers = row.verdict.blockers.filter(({ role }) => role === null);
  if (blockers.length === 0) return null;
  return (
    <Panel title="Before anything else">
      <div className="stack">
        {blockers.map((blocker) => (
          <p key={blocker.kind}>{wordBlocker(blocker, { lineLabel })}</p>
        ))}
        <p className="quiet">
          No dimension is assumed for a size that is not in the table. The list below is what one end of it
          would need.
        </p>
        <WaysList blockers={blockers} row={row} outlook={outlook} />
      </div>
    </Panel>
  );
}
