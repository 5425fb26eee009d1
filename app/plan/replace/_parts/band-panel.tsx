import { DayBandChart } from '@/app/_shared/charts/day-band-chart';
import { count, dayText } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { addDays, daysBetween } from '@/lib/calendar';
import type { ToolPlan } from '@/lib/replacement/tool-plan';

/** How far the chart looks, and how many edges it draws. */
const AHEAD_DAYS = 84;
const MOST = 14;

/** The next changes as bands along the weeks. Nothing where none is in sight. */
export function BandPanel({ tools, today }: { readonly tools: readonly ToolPlan[]; readonly today: string }) {
  const soon = tools.filter(({ lowDay }) => lowDay !== null && daysBetween(today, lowDay) < AHEAD_DAYS);
  if (soon.length === 0) return null;
  const shown = soon.slice(0, MOST);
  const far = AHEAD_DAYS + 1;
  const days = (day: string | null) => (day === null ? far : daysBetween(today, day));
  const ticks = [0, 14, 28, 42, 56, 70, 84].map((at) => ({ days: at, label: dayLabel(addDays(today, at)) }));
  return (
    <Panel title="The next twelve weeks">
      <DayBandChart
        title="When each edge is due to be changed"
        summary={`${count(soon.length, 'edge')} may come due in twelve weeks; the plan’s own lines wear them, and beyond the plan its mean pace.`}
        rows={shown.map(({ toolId, lowDay, onDay, highDay }) => ({
          label: toolId,
          lowDays: days(lowDay),
          midDays: onDay !== null && days(onDay) <= AHEAD_DAYS ? days(onDay) : null,
          highDays: days(highDay),
        }))}
        ticks={ticks}
      />
    </Panel>
  );
}

/** "7 Dec": the weekday would crowd the axis. */
function dayLabel(day: string): string {
  return dayText(day, day).split(' ').slice(1).join(' ');
}
