import type { PartOnOffer, ToolInHand } from '../ensemble/build-ensemble';
import { isEdgeKind, partSizes } from './edge-histories';
import type { ShopFacts } from './shop-facts';
import { exposureParts, wornReadings } from './worn-readings';

/**
 * Tools with an edge still in service that are neither scrapped nor lost. A blade out for regrind comes back with a new
 * edge, one regrind older and from zero: that edge is what it has to give.
 */
export function toolsInHand(facts: ShopFacts): ToolInHand[] {
  const sizes = partSizes(facts);
  const current = new Map<string, (typeof facts.edges)[number]>();
  for (const edge of facts.edges) {
    const known = current.get(edge.toolId);
    if (known === undefined || known.edgeNo < edge.edgeNo) current.set(edge.toolId, edge);
  }
  return facts.tools.flatMap((tool) => {
    const odIn = sizes.get(tool.partId);
    const edge = current.get(tool.id);
    const gone = tool.state === 'scrapped' || tool.state === 'lost';
    if (gone || edge === undefined || odIn === undefined || !isEdgeKind(tool.role)) return [];
    const { id: toolId, partId, role: kind } = tool;
    if (tool.state === 'regrind')
      return [{ toolId, kind, partId, odIn, regrinds: edge.edgeNo, exposure: [] }];
    if (edge.end !== null) return [];
    const inHand = {
      toolId,
      kind,
      partId,
      odIn,
      regrinds: edge.edgeNo - 1,
      exposure: exposureParts(edge.use),
    };
    const readings = wornReadings(edge.readings ?? [], facts.readingSettings);
    return [readings.length === 0 ? inHand : { ...inHand, readings }];
  });
}

/** Parts of which a new tool may be bought. */
export function partsOnOffer(facts: ShopFacts): PartOnOffer[] {
  const sizes = partSizes(facts);
  return facts.parts.flatMap((part) => {
    const odIn = sizes.get(part.id);
    return odIn === undefined || !isEdgeKind(part.role) ? [] : [{ partId: part.id, kind: part.role, odIn }];
  });
}
