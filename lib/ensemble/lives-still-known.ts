import type { EdgeKind } from '../shop/vocabulary';
import { type Ensemble, residualKey, type ToolInHand } from './build-ensemble';
import type { KindDraws } from './kind-draws';

/**
 * Of the lives that an ensemble has worked out, those that another over `byKind` would find the same: of tools whose kind
 * has the very same draws and that have cut and shown nothing since. For an ensemble that follows another.
 */
export function livesStillKnown(
  before: Ensemble,
  byKind: ReadonlyMap<EdgeKind, KindDraws>,
  tools: readonly ToolInHand[],
): Map<string, Float64Array> {
  const known = new Map<string, Float64Array>();
  for (const tool of tools) {
    const draws = byKind.get(tool.kind);
    const life = before.lives.get(residualKey(tool.toolId));
    if (draws === undefined || life === undefined || before.draws(tool.kind) !== draws) continue;
    if (JSON.stringify(before.tool(tool.toolId)) === JSON.stringify(tool))
      known.set(residualKey(tool.toolId), life);
  }
  return known;
}
