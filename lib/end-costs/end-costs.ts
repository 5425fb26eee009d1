import type { LogEvent, RowCut } from '../score/log-event';
import type { Costs } from '../shop/costs';
import type { Part } from '../shop/part';
import type { EdgeKind } from '../shop/vocabulary';

/** What the ends of one size, service and material have cost, cones and threads apart. Money in minor units. */
export interface EndCost {
  readonly connectionId: string;
  readonly materialId: string;
  readonly kind: EdgeKind;
  readonly goodEnds: number;
  readonly spoiltEnds: number;
  /** Price of the edges and their regrinds, by the share of their life that was cut here. Null without a price. */
  readonly edgeMinor: number | null;
  readonly fluidMinor: number;
  readonly spoiltMinor: number;
  /** Calibrating the gauges that look at these ends; 0 where that is not counted. */
  readonly gaugeMinor: number;
  readonly perGoodEndMinor: number | null;
}

/** What the sum is made from. */
export interface EndCostInput {
  readonly events: readonly LogEvent[];
  readonly parts: readonly Part[];
  readonly costs: Costs;
  /** Fluid for one end, minor units: by connection and kind of work. */
  readonly fluidMinor: (connectionId: string, kind: EdgeKind) => number;
  /** Calibration of its gauges for one good end, minor units: by connection and kind of work. Absent: not counted. */
  readonly gaugeMinor?: (connectionId: string, kind: EdgeKind) => number;
  /** How much faster a material wears an edge than the reference; 1 where nothing is known. */
  readonly wearFactor: (materialId: string) => number;
}

/**
 * Cost of an end from the log: each tool's price and regrinds are spread over the wear it has taken (exposure × material factor), a tool that still
 * cuts counting only with the part of its life that is used, life being what finished tools of its part gave on average;
 * with fluid as planned, the gauges of the good ends, and ends that were not good. Tools without a price make their rows' edge cost unknown.
 */
export function endCosts(input: EndCostInput): EndCost[] {
  const { events, parts, costs, fluidMinor, wearFactor, gaugeMinor = () => 0 } = input;
  const tools = toolsOf(events, wearFactor);
  const rates = new Map([...tools].map(([id, tool]) => [id, costPerExposure(tool, tools, parts, costs)]));
  const found = new Map<string, EndCost>();
  for (const [toolId, { rows, kind }] of tools) {
    const rate = rates.get(toolId) ?? null;
    for (const row of rows) {
      const { connectionId, materialId, ends, goodEnds, exposurePerEnd } = row;
      const key = `${connectionId} ${materialId} ${kind}`;
      const before = found.get(key) ?? empty(connectionId, materialId, kind);
      const edge = rate === null ? null : rate * ends * exposurePerEnd;
      found.set(key, {
        ...before,
        goodEnds: before.goodEnds + goodEnds,
        spoiltEnds: before.spoiltEnds + ends - goodEnds,
        edgeMinor: edge === null || before.edgeMinor === null ? null : before.edgeMinor + edge,
        fluidMinor: before.fluidMinor + ends * fluidMinor(connectionId, kind),
        spoiltMinor: before.spoiltMinor + (ends - goodEnds) * costs.spoiltEndMinor,
        gaugeMinor: before.gaugeMinor + goodEnds * gaugeMinor(connectionId, kind),
      });
    }
  }
  return [...found.values()].map(perGoodEnd).sort(bySize);
}

interface CutTool {
  readonly partId: string;
  readonly kind: EdgeKind;
  readonly rows: RowCut[];
  edges: number;
  /** Its last edge has ended and no other has begun. */
  finished: boolean;
}

function toolsOf(events: readonly LogEvent[], wearFactor: EndCostInput['wearFactor']): Map<string, CutTool> {
  const tools = new Map<string, CutTool>();
  for (const event of events) {
    const tool = tools.get(event.toolId);
    if (event.type === 'began') {
      const { partId, kind } = event;
      const known = tool ?? { partId, kind, rows: [], edges: 0, finished: false };
      known.edges++;
      known.finished = false;
      tools.set(event.toolId, known);
    } else if (event.type === 'cut') {
      const exposurePerEnd = event.exposurePerEnd * wearFactor(event.materialId);
      tool?.rows.push({ ...event, exposurePerEnd });
    } else if (event.type === 'ended' && tool !== undefined) tool.finished = true;
  }
  return tools;
}

function exposureOf({ rows }: CutTool): number {
  return rows.reduce((sum, { ends, exposurePerEnd }) => sum + ends * exposurePerEnd, 0);
}

function costPerExposure(
  tool: CutTool,
  tools: ReadonlyMap<string, CutTool>,
  parts: readonly Part[],
  costs: Costs,
): number | null {
  const price = parts.find(({ id }) => id === tool.partId)?.priceMinor ?? null;
  const used = exposureOf(tool);
  if (price === null || used === 0) return null;
  const total = price + (tool.edges - 1) * costs.regrindMinor;
  if (tool.finished) return total / used;
  const done = [...tools.values()].filter(({ partId, finished }) => finished && partId === tool.partId);
  const typical = done.reduce((sum, other) => sum + exposureOf(other), 0) / done.length;
  return total / Math.max(used, done.length === 0 ? used : typical);
}

function empty(connectionId: string, materialId: string, kind: EdgeKind): EndCost {
  const zero = { goodEnds: 0, spoiltEnds: 0, edgeMinor: 0, fluidMinor: 0, spoiltMinor: 0, gaugeMinor: 0 };
  return { connectionId, materialId, kind, ...zero, perGoodEndMinor: null };
}

function perGoodEnd(cost: EndCost): EndCost {
  const { edgeMinor, fluidMinor, spoiltMinor, gaugeMinor, goodEnds } = cost;
  if (edgeMinor === null || goodEnds === 0) return cost;
  return { ...cost, perGoodEndMinor: (edgeMinor + fluidMinor + spoiltMinor + gaugeMinor) / goodEnds };
}

function bySize(a: EndCost, b: EndCost): number {
  const key = ({ connectionId, materialId, kind }: EndCost) => `${connectionId} ${materialId} ${kind}`;
  return key(a) < key(b) ? -1 : 1;
}
