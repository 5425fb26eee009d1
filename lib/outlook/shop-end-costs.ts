import { type EndCost, endCosts } from '../end-costs/end-costs';
import { DEFAULT_COSTS } from '../shop/costs';
import type { EdgeKind } from '../shop/vocabulary';
import { logEvents } from './log-events';
import { demandOf } from './plan-facts';
import type { ShopFacts } from './shop-facts';
import type { ToolLog } from './stored-predictions';

/**
 * What ends cost the shop, from its log: edges, fluid as planned at the price of its usual fluid, spoilt ends. By size, service,
 * material and kind of work. For /plan/costs.
 */
export function shopEndCosts({
  logs,
  lineEnds,
  facts,
}: {
  readonly logs: readonly ToolLog[];
  readonly lineEnds: ReadonlyMap<string, number>;
  readonly facts: ShopFacts;
}): EndCost[] {
  const { parts, connections, costs = DEFAULT_COSTS } = facts;
  const perMl = fluidMinorPerMl(facts);
  const perEnd = new Map<string, number>();
  const fluidMinor = (connectionId: string, kind: EdgeKind): number => {
    const key = `${connectionId} ${kind}`;
    const connection = connections.find(({ id }) => id === connectionId);
    const dropsPerMl = parts.find(
      ({ role, dropsPerMl: drops }) => role === 'fluid' && drops !== null,
    )?.dropsPerMl;
    const settings = { dropsPerMl: dropsPerMl ?? undefined, wasteFactor: facts.shop?.fluidWasteFactor };
    const known =
      perEnd.get(key) ??
      perMl * demandOf(connection, [kind === 'blade' ? 'cone' : 'thread'], settings).fluidMlPerEnd;
    perEnd.set(key, known);
    return known;
  };
  const factors = new Map(facts.materials.map(({ id, factor }) => [id, factor]));
  const wearFactor = (materialId: string): number => factors.get(materialId) ?? 1;
  const events = logEvents(logs, { parts, connections, lineEnds });
  return endCosts({ events, parts, costs, fluidMinor, wearFactor });
}

/** Price of a millilitre of the fluid that the shop has most of; 0 where no price or container is written down. */
function fluidMinorPerMl({ parts, tools }: ShopFacts): number {
  const priced = parts.filter(
    ({ role, priceMinor, containerMl }) => role === 'fluid' && priceMinor && containerMl,
  );
  const held = (partId: string) => tools.filter((tool) => tool.partId === partId).length;
  const [usual] = priced.sort((a, b) => held(b.id) - held(a.id) || (a.id < b.id ? -1 : 1));
  return usual === undefined ? 0 : (usual.priceMinor ?? 0) / (usual.containerMl ?? 1);
}
