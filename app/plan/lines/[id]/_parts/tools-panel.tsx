import { ButtonLink, Panel } from '@/app/_shared/ui';
import { ToolForLine } from '@/app/plan/week/_parts/tool-for-line';
import type { ToolProposal } from '@/lib/issue-order/propose-tools';

interface ToolsPanelProps {
  readonly lineId: string;
  readonly proposals: readonly ToolProposal[];
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
}

/** Which die and which blade go out with the line and why, and the way to the counter. Nothing where nothing is cut any more. */
export function ToolsPanel({ lineId, proposals, today, lineLabel }: ToolsPanelProps) {
  if (proposals.length === 0) return null;
  const id = encodeURIComponent(lineId);
  return (
    <Panel id="tools" title="Tools that go out with it">
      <div className="stack">
        <div className="columns">
          {proposals.map((proposal) => (
            <ToolForLine key={proposal.kind} proposal={proposal} today={today} lineLabel={lineLabel} />
          ))}
        </div>
        <div className="cluster no-print">
          <ButtonLink href={`/crib/issue/${id}`}>Make the kit</ButtonLink>
          <ButtonLink href={`/accept/${id}`}>Gauge and accept its ends</ButtonLink>
        </div>
      </div>
    </Panel>
  );
}
