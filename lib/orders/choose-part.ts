import type { ShopFacts } from '../outlook/shop-facts';
import type { Part } from '../shop/part';
import type { EdgeKind, Hand, ToolState } from '../shop/vocabulary';
import { piecesOnOrder } from './pieces-on-order';

const GONE: readonly ToolState[] = ['lost', 'scrapped'];

/**
 * Which part would be bought for a size: one that serves its size, a die of its hand; of several the one that the shop has
 * most of, in pieces, here or on order, then the cheapest, then by key. Undefined where the shop knows none.
 */
export function choosePart(
  kind: EdgeKind,
  { connectionId, hand }: { readonly connectionId: string; readonly hand: Hand },
  facts: ShopFacts,
): Part | undefined {
  const fit = facts.parts.filter(
    (part) =>
      part.role === kind &&
      part.fitsConnectionIds.includes(connectionId) &&
      (kind !== 'die' || part.hand === hand),
  );
  const held = (part: Part) =>
    facts.tools.filter(({ partId, state }) => partId === part.id && !GONE.includes(state)).length +
    piecesOnOrder(facts, part.id);
  const price = ({ priceMinor }: Part) => priceMinor ?? Number.POSITIVE_INFINITY;
  return fit.sort((a, b) => held(b) - held(a) || price(a) - price(b) || (a.id < b.id ? -1 : 1))[0];
}
