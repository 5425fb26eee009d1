import { type Ensemble, ensembleOver, type ToolInHand } from '../ensemble/build-ensemble';
import type { KindDraws } from '../ensemble/kind-draws';
import type { LifeDraws } from '../ensemble/life-draws';
import type { ShopFacts } from '../outlook/shop-facts';
import { toolsInHand } from '../outlook/tools-in-hand';
import { EDGE_KINDS, type EdgeKind } from '../shop/vocabulary';

/**
 * The same futures with the lives of pieces that a change brings in: a new tool, or a blade back from a regrind. Every
 * other tool, every piece on order and every material keeps its own arrays, the very same ones, so that the difference
 * between two answers is the change and nothing else. A part or a material that the futures do not know stays unknown.
 */
export function changedDraws(ensemble: Ensemble, before: ShopFacts, after: ShopFacts): LifeDraws {
  const known = new Map(before.tools.map((tool) => [tool.id, tool]));
  const other = new Set(
    after.tools
      .filter((tool) => known.get(tool.id) !== tool && isOtherEdge(tool, known.get(tool.id)))
      .map(({ id }) => id),
  );
  const tools = other.size === 0 ? [] : toolsInHand(after).filter(({ toolId }) => other.has(toolId));
  if (tools.length === 0) return ensemble;
  const more = ensembleOver(kindsOf(ensemble), { tools, parts: [], drawCount: ensemble.drawCount });
  const isMore = new Set(tools.map(({ toolId }: ToolInHand) => toolId));
  return {
    drawCount: ensemble.drawCount,
    materialFactor: ensemble.materialFactor,
    newLife: ensemble.newLife,
    ...(ensemble.regroundLife === undefined ? {} : { regroundLife: ensemble.regroundLife }),
    residualLife: (toolId) =>
      isMore.has(toolId) ? more.residualLife(toolId) : ensemble.residualLife(toolId),
  };
}

type Tool = ShopFacts['tools'][number];

/** New to the record, or with a new edge once it is back from the grinder. */
function isOtherEdge(tool: Tool, was: Tool | undefined): boolean {
  return was === undefined || (tool.state === 'regrind') !== (was.state === 'regrind');
}

function kindsOf(ensemble: Ensemble): Map<EdgeKind, KindDraws> {
  const byKind = new Map<EdgeKind, KindDraws>();
  for (const kind of EDGE_KINDS) {
    const draws = ensemble.draws(kind);
    if (draws !== undefined) byKind.set(kind, draws);
  }
  return byKind;
}
