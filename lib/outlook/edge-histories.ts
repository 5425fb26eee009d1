import type { EdgeUse } from '../ledger/tool-record';
import type { EdgeHistory, ExposurePart } from '../life/observation';
import type { EdgeKind, Role } from '../shop/vocabulary';
import { fromMicro } from '../units/micro';
import type { EdgeFacts, ShopFacts, ToolFacts } from './shop-facts';

/** Whether a role has an edge that wears. */
export function isEdgeKind(role: Role): role is EdgeKind {
  return role === 'blade' || role === 'die';
}

/**
 * The evidence that the record holds on how long edges last. An edge found worn wore out within the ends of its last
 * row that were not good, or, where all were good, at the last of them. A first edge that was already used when it was
 * entered, by nobody knows how much, says nothing and is left out.
 */
export function edgeHistories(
  facts: Pick<ShopFacts, 'tools' | 'edges' | 'parts' | 'connections'>,
): EdgeHistory[] {
  const tools = new Map(facts.tools.map((tool) => [tool.id, tool]));
  const odOf = partSizes(facts);
  return facts.edges.flatMap((edge) => {
    const tool = tools.get(edge.toolId);
    const odIn = tool && odOf.get(tool.partId);
    if (tool === undefined || odIn === undefined || !isEdgeKind(tool.role) || isUnknownStart(tool, edge))
      return [];
    return [historyOf(edge, { tool, kind: tool.role, odIn })];
  });
}

/** The tube size, inches, that each part with an edge is for: the smallest size it fits. */
export function partSizes(facts: Pick<ShopFacts, 'parts' | 'connections'>): Map<string, number> {
  const odOf = new Map(facts.connections.map(({ id, odNum, odDen }) => [id, odNum / odDen]));
  const sizes = new Map<string, number>();
  for (const part of facts.parts) {
    const fitted = part.fitsConnectionIds.flatMap((id) => odOf.get(id) ?? []);
    if (isEdgeKind(part.role) && fitted.length > 0) sizes.set(part.id, Math.min(...fitted));
  }
  return sizes;
}

/** True when nobody knows what this edge had cut before it was entered here. */
export function isUnknownStart(tool: Pick<ToolFacts, 'opening'>, edge: Pick<EdgeFacts, 'edgeNo'>): boolean {
  return tool.opening.known === 'unknown' && edge.edgeNo === 1;
}

function historyOf(
  edge: EdgeFacts,
  { tool, kind, odIn }: { tool: ToolFacts; kind: EdgeKind; odIn: number },
): EdgeHistory {
  const key = {
    toolId: tool.id,
    edgeNo: edge.edgeNo,
    kind,
    partId: tool.partId,
    odIn,
    regrinds: edge.edgeNo - 1,
  };
  const parts = edge.use.map((use) => partOf(use, 1));
  const entered = enteredWith(tool, edge);
  const last = edge.lastUse;
  if (edge.end !== 'worn' || last === null) {
    return { ...key, before: parts, during: [], end: edge.end ?? 'in-service', ...(entered && { entered }) };
  }
  const doubtful = partOf(last, Math.max(1, last.ends - last.goodEnds) / last.ends);
  const before = without(parts, edge.use, last, doubtful.base);
  return { ...key, before, during: [doubtful], end: 'worn', ...(entered && { entered }) };
}

/**
 * What a first edge had cut when it was entered here, counted. Of the edges in use at the time only those that had lasted so
 * long could be entered, so that much of its life is given and not evidence. One that ended without a row of its own was entered as
 * a finished life, and counts whole.
 */
function enteredWith(
  { opening }: Pick<ToolFacts, 'opening'>,
  { edgeNo, end, use, lastUse }: EdgeFacts,
): ExposurePart[] | undefined {
  if (opening.known !== 'counted' || edgeNo !== 1) return undefined;
  const total = use.reduce((sum, { exposureMicro }) => sum + exposureMicro, 0);
  if (end !== null && lastUse === null && total <= opening.exposureMicro) return undefined;
  const { materialId, exposureMicro } = opening;
  return [{ materialId, dry: false, rework: false, base: fromMicro(exposureMicro) }];
}

function partOf(use: EdgeUse, share: number): ExposurePart {
  const { materialId, dry, rework } = use;
  return { materialId, dry, rework, base: fromMicro(use.exposureMicro) * share };
}

/** The parts with the doubtful share of the last row taken out of the sum that it was counted in. */
function without(
  parts: readonly ExposurePart[],
  use: readonly EdgeUse[],
  last: EdgeUse,
  base: number,
): ExposurePart[] {
  const at = use.findIndex(
    (sum) =>
      sum.connectionId === last.connectionId &&
      sum.materialId === last.materialId &&
      sum.dry === last.dry &&
      sum.rework === last.rework,
  );
  return parts.map((part, i) => (i === at ? { ...part, base: Math.max(0, part.base - base) } : part));
}
