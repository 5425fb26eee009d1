import type { Ensemble } from '../ensemble/build-ensemble';
import type { LifeDraws } from '../ensemble/life-draws';
import { RECEIVING_DAYS } from '../outlook/order-arrivals';
import type { ShopFacts, ToolFacts } from '../outlook/shop-facts';
import { partRegrind } from '../replacement/part-regrind';
import { DEFAULT_COSTS } from '../shop/costs';
import { lastEdge } from './last-edge';
import type { NeedSource } from './need-walk';

/** How often a blade of a part is worth regrinding: by cost, within its limit. The one decision is `regrindOrBuy`'s. */
export type WorthRegrinding = (partId: string) => number;

/** That decision for every part of the shop; undefined for draws that know no prices of wear, as in a bare simulation. */
export function worthRegrinding(facts: ShopFacts, draws: LifeDraws): WorthRegrinding | undefined {
  if (!isEnsemble(draws)) return undefined;
  const parts = new Map(facts.parts.map((part) => [part.id, part]));
  return (partId) => {
    const part = parts.get(partId);
    return part === undefined ? 0 : (partRegrind(facts, draws, part)?.bestRegrinds ?? 0);
  };
}

function isEnsemble(draws: LifeDraws): draws is Ensemble {
  return 'medianLife' in draws && 'draws' in draws;
}

/** What regrinds give of one blade, none of them sent out yet. */
export interface RegrindSupply {
  /** Its edge is worn and it has not been sent: it can go out today. */
  readonly isWorn: boolean;
  readonly again: NonNullable<NeedSource['again']>;
}

/** Days from sending a blade out until it is on the shelf, the receiving check counted in. */
export function regrindTurnaroundDays({ costs = DEFAULT_COSTS }: Pick<ShopFacts, 'costs'>): number {
  return costs.regrindDays + RECEIVING_DAYS;
}

/**
 * The edges that regrinding still gives a blade: those within its part's limit that cost less than new ones, each with the life of an edge
 * so often reground. Undefined for what is no blade, is set aside or gone, or is done. Every blade sent out is taken to come
 * back usable: what comes back otherwise is a new blade to buy, and says so when it happens.
 */
export function regrindSupply(
  tool: ToolFacts,
  facts: ShopFacts,
  ensemble: LifeDraws,
  worth: WorthRegrinding,
): RegrindSupply | undefined {
  const last = lastEdge(facts, tool.id);
  const counts = tool.state === 'in-crib' || tool.state === 'issued' || tool.state === 'regrind';
  if (tool.role !== 'blade' || !counts || last === undefined) return undefined;
  // What is out has its next edge counted already.
  const first = last.edgeNo + (tool.state === 'regrind' ? 1 : 0);
  const lives: Float64Array[] = [];
  for (let regrinds = first; regrinds <= worth(tool.partId); regrinds++) {
    const life = ensemble.regroundLife?.(tool.partId, { toolId: tool.id, regrinds });
    if (life !== undefined) lives.push(life);
  }
  if (lives.length === 0) return undefined;
  const isWorn = tool.state !== 'regrind' && last.end !== null;
  return { isWorn, again: { afterDays: regrindTurnaroundDays(facts), lives } };
}
