import { addDays, type Day } from '../calendar/day';
import type { ShopFacts } from '../outlook/shop-facts';
import { DEFAULT_COSTS } from '../shop/costs';
import { lastEdge } from './last-edge';
import { piecesToSuffice } from './part-need';
import type { PartOutlook } from './part-outlook';
import { regrindTurnaroundDays } from './regrind-supply';

/** What regrinds save of an order. */
export interface RegrindsInstead {
  /** New pieces that are not needed, as surely as the shop asks, because blades are reground. */
  readonly pieces: number;
  /** Worn blades on the shelf that can go out today, and the day on which they are back. */
  readonly wornIds: readonly string[];
  readonly backOnDay: Day;
  /** Days that a blade is away, the receiving check counted in, and what one regrind costs. */
  readonly awayDays: number;
  readonly costMinor: number;
}

/**
 * How many new blades regrinds make needless: the level that suffices without any regrind to come, less the one with them.
 * Null where they make none needless. Source: formula (the same futures both times).
 */
export function regrindsInstead(
  { part, bought, total, horizonDays, service }: PartOutlook,
  facts: Pick<ShopFacts, 'today' | 'tools' | 'edges' | 'costs'>,
): RegrindsInstead | null {
  if (bought === null) return null;
  const pieces = piecesToSuffice(bought, horizonDays, service) - piecesToSuffice(total, horizonDays, service);
  if (pieces <= 0) return null;
  const awayDays = regrindTurnaroundDays(facts);
  const { regrindMinor } = facts.costs ?? DEFAULT_COSTS;
  const wornIds = facts.tools
    .filter(
      ({ id, partId, state }) =>
        partId === part.id && state === 'in-crib' && lastEdge(facts, id)?.end != null,
    )
    .map(({ id }) => id);
  return { pieces, wornIds, backOnDay: addDays(facts.today, awayDays), awayDays, costMinor: regrindMinor };
}
