import { type WeekCell, type WeekRow, weekGrid } from '@/lib/capability/week-grid';
import type { Outlook } from '@/lib/outlook/outlook';
import { referenceMaterialId, sizeProbes } from '@/lib/outlook/plan-facts';
import { shopPlan } from '@/lib/outlook/shop-plan';

/** As far as a lead plans ahead. */
export const WEEKS_AHEAD = 12;

const kept = new WeakMap<Outlook, readonly WeekRow[]>();

/** Sizes by week, worked out once to an outlook. */
export function shopWeeks(outlook: Outlook): readonly WeekRow[] {
  const known = kept.get(outlook);
  if (known !== undefined) return known;
  const { facts, ensemble } = outlook;
  const rows = weekGrid({
    ...shopPlan(facts, ensemble),
    sizes: sizeProbes(facts),
    materialId: referenceMaterialId(facts),
    weekCount: WEEKS_AHEAD,
  });
  kept.set(outlook, rows);
  return rows;
}

/** How a cell stands: as the plan check says, and apart from that the weeks in which the set is out with a planned line. */
export type CellState = 'can-make' | 'at-risk' | 'cannot-make-now' | 'in-use';

/** A size is in use when nothing but lines of the plan keeps it from one end more. */
export function cellState({ verdict, blockers }: Pick<WeekCell, 'verdict' | 'blockers'>): CellState {
  const hard = blockers.filter((blocker) => blocker.hard);
  const taken = hard.every((blocker) => blocker.kind === 'held-elsewhere' && blocker.lineId !== null);
  return verdict === 'cannot-make-now' && hard.length > 0 && taken ? 'in-use' : verdict;
}
