import type { LifeDraws } from '../ensemble/life-draws';
import { newOrderDays } from '../outlook/order-arrivals';
import type { ShopFacts } from '../outlook/shop-facts';
import { type EdgeNeed, edgeNeeds } from './edge-need';
import type { NeedLine, NeedSource } from './need-walk';
import type { OrderProposal } from './order-proposals';
import { piecesOnOrder } from './pieces-on-order';

/** Stock of one part over the weeks, in ends of the work it is mostly for: 10 %, 50 % and 90 % of the futures. */
export interface StockFan {
  readonly partId: string;
  /** Days from today of each point. */
  readonly days: readonly number[];
  readonly low: readonly number[];
  readonly mid: readonly number[];
  readonly high: readonly number[];
  /** The middle with the proposed order placed today; null where nothing is proposed. */
  readonly midWithOrder: readonly number[] | null;
}

const STEP_DAYS = 7;

/**
 * How the stock of a part runs against the plan and the orders on their way: life here and arrived, less what the lines have
 * cut by then, a line spread evenly over its days. Below zero it is the ends that the shop is behind with.
 * `endExposure`: exposure of one end of the work it is mostly for, so that the chart reads in ends.
 */
export function stockFan(
  facts: ShopFacts,
  ensemble: LifeDraws,
  { part, outlook, chosen, quantity }: OrderProposal,
  endExposure: number,
): StockFan {
  const need = edgeNeeds(facts, ensemble, 'as-drawn').find(({ kind }) => kind === outlook.kind);
  const p = need?.parts.findIndex(({ id }) => id === part.id) ?? -1;
  const lines = need?.lines.filter((line) => line.part === p) ?? [];
  const places = new Set(need?.lines.flatMap((line, i) => (line.part === p ? [i] : [])));
  const sources = withLives(need, ensemble).filter(({ serves }) => serves.some((i) => places.has(i)));
  const { drawCount } = ensemble;
  const days = Array.from(
    { length: Math.ceil(outlook.horizonDays / STEP_DAYS) + 1 },
    (_, week) => week * STEP_DAYS,
  );
  const ordered = quantity > 0 ? orderedSource(facts, ensemble, part.id, chosen.offer, quantity) : null;
  const at = (list: readonly NeedSource[], day: number) =>
    netAt(list, lines, day, drawCount, endExposure).sort();
  const fans = days.map((day) => at(sources, day));
  const rank = (sorted: Float64Array | undefined, share: number) =>
    sorted?.[Math.floor(share * (drawCount - 1))] ?? 0;
  return {
    ...{ partId: part.id, days },
    low: fans.map((fan) => rank(fan, 0.1)),
    mid: fans.map((fan) => rank(fan, 0.5)),
    high: fans.map((fan) => rank(fan, 0.9)),
    midWithOrder: ordered && days.map((day) => rank(at([...sources, ordered], day), 0.5)),
  };
}

/** Sources with the lives of pieces on order added up, dealt out in the order of the sources. */
function withLives(need: EdgeNeed | undefined, ensemble: LifeDraws): NeedSource[] {
  if (need === undefined) return [];
  const next = need.parts.map(() => 0);
  return need.sources.map((source) => {
    const { fresh } = source;
    if (fresh === undefined) return source;
    const first = next[fresh.part] ?? 0;
    next[fresh.part] = first + fresh.pieces;
    const life = livesFrom(ensemble, need.parts[fresh.part]?.id ?? '', first, fresh.pieces);
    return { ...source, life };
  });
}

/** Lives of so many new pieces of a part added up, from the n-th on. */
function livesFrom(ensemble: LifeDraws, partId: string, first: number, pieces: number): Float64Array {
  const life = new Float64Array(ensemble.drawCount);
  for (let n = 0; n < pieces; n++) {
    const more = ensemble.newLife(partId, first + n);
    for (let k = 0; k < life.length; k++) life[k] = (life[k] as number) + (more?.[k] ?? 0);
  }
  return life;
}

function orderedSource(
  facts: ShopFacts,
  ensemble: LifeDraws,
  partId: string,
  offer: { readonly supplier: string; readonly leadTimeDays: number | null },
  quantity: number,
): NeedSource | null {
  const { supplier, leadTimeDays } = offer;
  if (leadTimeDays === null) return null;
  const life = livesFrom(ensemble, partId, piecesOnOrder(facts, partId), quantity);
  return {
    serves: [],
    freeInDays: newOrderDays(facts, { partId, supplier, leadTimeDays }, life.length),
    life,
  };
}

/** Life that has come by a day less what is cut by then, per draw, in ends. */
function netAt(
  sources: readonly NeedSource[],
  lines: readonly NeedLine[],
  day: number,
  drawCount: number,
  endExposure: number,
): Float64Array {
  const net = new Float64Array(drawCount);
  for (const { freeInDays: free, life } of sources) {
    for (let k = 0; k < drawCount; k++) {
      const there = typeof free === 'number' ? free : (free[k] as number);
      if (there <= day) net[k] = (net[k] as number) + (life[k] as number);
    }
  }
  for (const { startInDays, dueInDays, amount, weights } of lines) {
    const span = Math.max(1, dueInDays - startInDays + 1);
    const done = Math.min(1, Math.max(0, (day - startInDays) / span));
    for (let k = 0; k < drawCount; k++) net[k] = (net[k] as number) - amount * done * (weights[k] as number);
  }
  return net.map((exposure) => exposure / endExposure);
}
