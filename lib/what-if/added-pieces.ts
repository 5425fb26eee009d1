import { addDays } from '../calendar/day';
import { isEdgeKind } from '../outlook/edge-histories';
import { newOrderLuck } from '../outlook/order-arrivals';
import type { EdgeFacts, OrderFacts, ShopFacts, ToolFacts } from '../outlook/shop-facts';
import type { Part } from '../shop/part';
import { CALIBRATED_ROLES } from '../shop/vocabulary';

/** A gauge that is bought comes with a calibration of a year. Common practice, no source. */
const NEW_CALIBRATION_DAYS = 365;

/** New pieces of a part, in the crib today: what they would be on record. Their IDs are of this question only. */
export function newPieces(
  facts: Pick<ShopFacts, 'today'>,
  part: Part,
  { quantity, mark }: { quantity: number; mark: string },
): { tools: ToolFacts[]; edges: EdgeFacts[] } {
  const tools = Array.from({ length: quantity }, (_, n): ToolFacts => {
    return {
      id: `~${mark}-${n + 1} ${part.id}`,
      partId: part.id,
      role: part.role,
      hand: part.hand,
      opening: { known: 'new' },
      state: 'in-crib',
      jobLineId: null,
      backOnDay: null,
      dueOnDay: CALIBRATED_ROLES.includes(part.role) ? addDays(facts.today, NEW_CALIBRATION_DAYS) : null,
      expiresOnDay: null,
      openedOnDay: null,
      levelMl: part.role === 'fluid' ? part.containerMl : null,
    };
  });
  const edges = tools.flatMap((tool): EdgeFacts[] =>
    isEdgeKind(tool.role) ? [{ toolId: tool.id, edgeNo: 1, end: null, lastUse: null, use: [] }] : [],
  );
  return { tools, edges };
}

/**
 * An order placed today with a supplier and promised for a day. It comes on the days drawn for an order of that part that might be
 * placed with them. Its ID sorts after the shop's own, so that their pieces keep their lives.
 */
export function newOrder(
  { today }: Pick<ShopFacts, 'today'>,
  order: { partId: string; quantity: number; promisedOnDay: string; supplier: string; mark: string },
): OrderFacts {
  const { partId, quantity, promisedOnDay, supplier, mark } = order;
  return {
    id: `~${mark}`,
    partId,
    quantity,
    receivedQuantity: 0,
    expectedOnDay: promisedOnDay,
    supplier,
    placedOnDay: today,
    promisedOnDay,
    statedOnDay: today,
    luckKey: newOrderLuck({ partId, supplier }),
  };
}
