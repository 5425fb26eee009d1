import type { GroupedBy } from '../compare/comparison';
import type { GroupedEdge } from '../compare/grouped-edge';
import type { EdgeHistory, ExposurePart } from '../life/observation';
import type { EdgeGroups, HeatUse } from './edge-groups';

/**
 * The edges of one kind by lot, supplier, heat or fluid. An edge belongs to its lot and supplier whole, to a heat with what it
 * cut of it, and whole to the fluid that cut most of its exposure. Edges that cut nothing are left out: they say nothing.
 */
export function groupedEdges(
  histories: readonly EdgeHistory[],
  groups: readonly EdgeGroups[],
  groupedBy: GroupedBy,
): Map<string, GroupedEdge[]> {
  const groupsOf = new Map(groups.map((group) => [`${group.edgeNo}:${group.toolId}`, group]));
  const found = new Map<string, GroupedEdge[]>();
  for (const history of histories) {
    const group = groupsOf.get(`${history.edgeNo}:${history.toolId}`);
    if (group === undefined || history.before.length + history.during.length === 0) continue;
    const belongs: [string | undefined, GroupedEdge][] =
      groupedBy === 'heat'
        ? group.heats.map((use) => [use.heat, withinHeat(history, group, use)])
        : [[group[FIELD[groupedBy]], { history, ends: group.ends }]];
    for (const [id, edge] of belongs) if (id !== undefined) found.set(id, [...(found.get(id) ?? []), edge]);
  }
  return found;
}

const FIELD = {
  lot: 'lot',
  supplier: 'supplier',
  'fluid-lot': 'fluidLot',
  'fluid-product': 'fluidProduct',
} as const satisfies Record<Exclude<GroupedBy, 'heat'>, keyof EdgeGroups>;

/** What of a history was cut of one heat. The row in which it wore out belongs to the heat of that row. */
function withinHeat(
  history: EdgeHistory,
  { lastHeat }: EdgeGroups,
  { heat, ends, parts }: HeatUse,
): GroupedEdge {
  const during = lastHeat === heat ? history.during : [];
  return { history, ends, within: { before: lessOf(parts, during), during } };
}

/** Exposure with some of it taken out, each part from those cut alike, the last first. */
function lessOf(parts: readonly ExposurePart[], taken: readonly ExposurePart[]): ExposurePart[] {
  const left = parts.map((part) => ({ ...part }));
  for (const { materialId, dry, rework, base } of taken) {
    let open = base;
    for (const part of [...left].reverse()) {
      if (part.materialId !== materialId || part.dry !== dry || part.rework !== rework) continue;
      const less = Math.min(open, part.base);
      part.base -= less;
      open -= less;
    }
  }
  return left;
}
