import { buildEnsemble, type Ensemble, type PartOnOffer, type ToolInHand } from '../ensemble/build-ensemble';
import { fitLife } from '../life/fit-life';
import type { LifeFit } from '../life/life-fit';
import { EDGE_KINDS, type EdgeKind } from '../shop/vocabulary';
import { edgeHistories, isEdgeKind, partSizes } from './edge-histories';
import { firstGuesses, lifePriors } from './life-beliefs';
import type { ShopFacts } from './shop-facts';
import { exposureParts, wornReadings } from './worn-readings';

/** The shop's one ensemble of futures: both kinds fitted to its record, every tool that can still cut, every part. */
export function shopEnsemble(facts: ShopFacts): Ensemble {
  const histories = edgeHistories(facts);
  const kinds: Partial<Record<EdgeKind, LifeFit>> = {};
  for (const kind of EDGE_KINDS) {
    const priors = lifePriors(kind, facts.materials, facts.beliefs);
    const fit = fitLife({ kind, histories, priors, guesses: firstGuesses(kind, facts) });
    if (fit.ok) kinds[kind] = fit;
  }
  return buildEnsemble({ kinds, tools: toolsInHand(facts), parts: partsOnOffer(facts) });
}

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
    const readings = wornReadings(edge.readings ?? []);
    return [readings.length === 0 ? inHand : { ...inHand, readings }];
  });
}

function partsOnOffer(facts: ShopFacts): PartOnOffer[] {
  const sizes = partSizes(facts);
  return facts.parts.flatMap((part) => {
    const odIn = sizes.get(part.id);
    return odIn === undefined || !isEdgeKind(part.role) ? [] : [{ partId: part.id, kind: part.role, odIn }];
  });
}
