import 'server-only';
import type { Db } from '@/db/open';
import { type GaugeRow, listGauges } from '@/db/queries/gauges';
import { setNeeds } from '@/lib/capability/complete-set';
import { type DueStanding, dueStanding, endsUsedUpOnDay } from '@/lib/gauge/due';
import type { LapseWarning } from '@/lib/outlook/lapse-warnings';
import { lapseWarnings } from '@/lib/outlook/lapse-warnings';
import { endsToMake } from '@/lib/outlook/plan-facts';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import type { Part } from '@/lib/shop/part';

/** A gauge with all that the register says of it. */
export interface GaugeView {
  readonly gauge: GaugeRow;
  readonly part: Part;
  /** The tube size it serves; null when it serves more than one. */
  readonly sizeIn: number | null;
  readonly due: DueStanding;
  /** Jobs that run past its last day. */
  readonly lapses: readonly LapseWarning[];
  /** The day on which the plan will have used up its ends, if all are gauged with it; null where it will not. */
  readonly endsUsedUpOnDay: string | null;
}

/** The register: every gauge that is the shop's, by size, then kind, then ID. */
export function gaugeViews(db: Db, facts: ShopFacts): GaugeView[] {
  const parts = new Map(facts.parts.map((part) => [part.id, part]));
  const warnings = lapseWarnings(facts);
  return listGauges(db)
    .flatMap((gauge): GaugeView[] => {
      const part = parts.get(gauge.partId);
      if (part === undefined) return [];
      const lapses = warnings.filter(({ toolId }) => toolId === gauge.id);
      const due = dueStanding(gauge, facts.today);
      const usedUp = usedUpOnDay(due, gauge, part, facts);
      return [{ gauge, part, sizeIn: sizeOf(part, facts), due, lapses, endsUsedUpOnDay: usedUp }];
    })
    .sort((a, b) => (a.sizeIn ?? 99) - (b.sizeIn ?? 99));
}

function usedUpOnDay(
  { endsLeft }: DueStanding,
  { role }: GaugeRow,
  { fitsConnectionIds }: Part,
  { lines, today }: ShopFacts,
): string | null {
  if (endsLeft === null || endsLeft === 0) return null;
  const planned = lines
    .filter(
      (line) =>
        fitsConnectionIds.includes(line.connectionId) &&
        setNeeds(line.operations).some((need) => need.role === role),
    )
    .map((line) => ({ ends: endsToMake(line), fromDay: line.startOnDay, toDay: line.dueOnDay }));
  return endsUsedUpOnDay(endsLeft, planned, today);
}

function sizeOf(part: Part, { connections }: ShopFacts): number | null {
  const sizes = new Set(
    connections
      .filter(({ id }) => part.fitsConnectionIds.includes(id))
      .map(({ odNum, odDen }) => odNum / odDen),
  );
  return sizes.size === 1 ? ([...sizes][0] ?? null) : null;
}
