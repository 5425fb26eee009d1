import { type EndCost, endCosts } from '../end-costs/end-costs';
import { type Gauging, gaugeCosts } from '../end-costs/gauge-costs';
import { DEFAULT_COSTS } from '../shop/costs';
import type { EdgeKind } from '../shop/vocabulary';
import { logEvents } from './log-events';
import { demandOf } from './plan-facts';
import type { ShopFacts } from './shop-facts';
import type { ToolLog } from './stored-predictions';

/**
 * What ends cost the shop, from its log: edges, fluid as planned at the price of its usual fluid, spoilt ends, its gauges'
 * calibrations. By size, service, material and kind of work, small sizes first. For /plan/costs.
 */
export function shopEndCosts({
  logs,
  lineEnds,
  facts,
  gauging,
}: {
  readonly logs: readonly ToolLog[];
  readonly lineEnds: ReadonlyMap<string, number>;
  readonly facts: ShopFacts;
  readonly gauging: Gauging;
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
  const gaugeMinor = gaugeCosts(gauging, costs.calibrationMinor ?? 0);
  const rows = endCosts({ events, parts, costs, fluidMinor, wearFactor, gaugeMinor });
  const places = new Map(connections.map((connection) => [connection.id, sizeOf(connection)]));
  const placeOf = ({ connectionId }: EndCost) => places.get(connectionId) ?? Number.POSITIVE_INFINITY;
  return rows.sort((a, b) => placeOf(a) - placeOf(b));
}

/** Small tubes first, of one size the medium pressure first. */
function sizeOf({ odNum, odDen, service }: ShopFacts['connections'][number]): number {
  return odNum / odDen + (service === 'high' ? 1e-6 : 0);
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
