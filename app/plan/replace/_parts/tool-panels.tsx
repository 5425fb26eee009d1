import { count } from '@/app/_shared/format';
import { EmptyState, Panel } from '@/app/_shared/ui';
import { addDays } from '@/lib/calendar';
import type { PartReplacement } from '@/lib/replacement/part-replacement';
import type { ToolPlan } from '@/lib/replacement/tool-plan';
import { BandPanel } from './band-panel';
import { FirstTable } from './first-table';

interface ToolPanelsProps {
  readonly tools: readonly ToolPlan[];
  readonly parts: readonly PartReplacement[];
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
}

/** What to change within a week, the weeks to come as bands, and the rest folded away. */
export function ToolPanels({ tools, parts, today, lineLabel }: ToolPanelsProps) {
  if (tools.length === 0)
    return (
      <EmptyState title="No edges to change">
        Receive dies and blades, and give their parts a price.
      </EmptyState>
    );
  const weekEnd = addDays(today, 7);
  const first = tools.filter(({ onDay }) => onDay !== null && onDay <= weekEnd);
  const later = tools.filter((plan) => !first.includes(plan));
  const shared = { parts, today, lineLabel };
  return (
    <>
      <Panel title="Change first" aside={count(first.length, 'edge')}>
        {first.length === 0 ? (
          <p>Nothing comes due within a week.</p>
        ) : (
          <FirstTable caption="Edges to change within a week" tools={first} {...shared} />
        )}
      </Panel>
      <BandPanel tools={tools} today={today} />
      {later.length === 0 ? null : (
        <Panel title="Later" aside={count(later.length, 'edge')}>
          <details>
            <summary>All edges that are here, in the order in which they come due</summary>
            <FirstTable caption="Edges to change later" tools={later} {...shared} />
          </details>
        </Panel>
      )}
    </>
  );
}
