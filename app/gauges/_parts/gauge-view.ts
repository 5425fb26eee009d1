import 'server-only';
import type { Db } from '@/db/open';
import { type GaugeRow, listGauges } from '@/db/queries/gauges';
import { type DueStanding, dueStanding } from '@/lib/gauge/due';
import type { LapseWarning } from '@/lib/outlook/lapse-warnings';
import { lapseWarnings } from '@/lib/outlook/lapse-warnings';
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
      return [{ gauge, part, sizeIn: sizeOf(part, facts), due: dueStanding(gauge, facts.today), lapses }];
    })
    .sort((a, b) => (a.sizeIn ?? 99) - (b.sizeIn ?? 99));
}

function sizeOf(part: Part, { connections }: ShopFacts): number | null {
  const sizes = new Set(
    connections
      .filter(({ id }) => part.fitsConnectionIds.includes(id))
      .map(({ odNum, odDen }) => odNum / odDen),
  );
  return sizes.size === 1 ? ([...sizes][0] ?? null) : null;
}
