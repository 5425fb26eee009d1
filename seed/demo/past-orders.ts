import { placeOrder, slipOrder } from '../../db/commands/keep-orders';
import { dayOfMs } from '../../lib/calendar/day';
import { invariant } from '../../lib/invariant';
import { type Act, act } from './act';
import type { Calendar } from './calendar';
import { actorOf } from './people';
import { CHLORINE_FREE_FLUID, OXYGEN_FLUID } from './set-up';

/** An order of the past, told by what came on it: how long it was promised to take, and how long it took to the first piece. */
interface PastOrder {
  readonly id: string;
  readonly partId: string;
  readonly toolIds: readonly string[];
  readonly promisedDays: number;
  readonly firstCameInDays: number;
  /** Days after the promise that the supplier owned up to, some days before it. */
  readonly slipDays?: number;
}

/** The order that a right-hand die came on, in a box of left-hand ones: the right one followed, and made it late. */
export const MIXED_BOX_ORDER = 'PO-051';

/** Dies come a few days late as a rule, blades and fluid about as promised. */
const PAST_ORDERS: readonly PastOrder[] = [
  order('PO-042', 'die-1-4', ['D-25-04'], 28, 33),
  order('PO-043', 'die-3-8', ['D-38-05'], 28, 26),
  order('PO-044', CHLORINE_FREE_FLUID, ['F-L06'], 5, 6),
  order('PO-049', 'die-9-16', ['D-56-05'], 28, 29),
  order(MIXED_BOX_ORDER, 'die-9-16', ['D-56-06', 'D-56-15', 'D-56-16', 'D-56-07'], 45, 35),
  order('PO-053', 'blade-3-4-medium', ['B-75-01', 'B-75-02'], 7, 8),
  order('PO-054', 'die-3-8', ['D-38-06'], 28, 34),
  order('PO-063', 'die-1-4', ['D-25-05'], 28, 28),
  { ...order('PO-070', 'die-9-16', ['D-56-09'], 28, 36), slipDays: 8 },
  order('PO-078', 'die-1-4', ['D-25-06'], 28, 30),
  { ...order('PO-081', 'die-3-8', ['D-38-08'], 28, 41), slipDays: 12 },
  order('PO-085', OXYGEN_FLUID, ['F-L08'], 5, 5),
  order('PO-092', 'die-1-4', ['D-25-07'], 28, 27),
  order('PO-113', 'die-9-16', ['D-56-14'], 28, 32),
  order('PO-116', 'blade-3-8-medium', ['B-38-09', 'B-38-10'], 7, 6),
];

function order(
  id: string,
  partId: string,
  toolIds: readonly string[],
  promisedDays: number,
  firstCameInDays: number,
): PastOrder {
  return { id, partId, toolIds, promisedDays, firstCameInDays };
}

const ORDER_OF: ReadonlyMap<string, string> = new Map(
  PAST_ORDERS.flatMap(({ id, toolIds }) => toolIds.map((toolId) => [toolId, id] as const)),
);

/** The order that a tool of the story came on; null where it came without one on record. */
export function pastOrderOf(toolId: string): string | null {
  return ORDER_OF.get(toolId) ?? null;
}

const DAY_MS = 86_400_000;

/** The orders themselves, placed so long before the story's first receipt on them; and the slips that were owned up to. */
export function pastOrderActs(calendar: Calendar, story: readonly Act[]): Act[] {
  const receivedAt = new Map(story.map(({ name, atMs }) => [name.split(' ', 2).join(' '), atMs]));
  const today = calendar.at(0, 0);
  return PAST_ORDERS.flatMap(({ id, partId, toolIds, promisedDays, firstCameInDays, slipDays }): Act[] => {
    const came = toolIds.map((toolId) => {
      const atMs = receivedAt.get(`receive ${toolId}`);
      invariant(atMs !== undefined, `the story receives ${toolId}`);
      return atMs;
    });
    const placedOffset = Math.floor((Math.min(...came) - today) / DAY_MS) - firstCameInDays;
    const placed = {
      ...{ id, partId, quantity: toolIds.length, placedOnDay: calendar.day(placedOffset) },
      expectedOnDay: calendar.day(placedOffset + promisedDays),
    };
    const by = actorOf('lead-1');
    const when = { atMs: calendar.at(placedOffset, 955), by, name: `order ${id}` };
    const placing = act(when, 'keep-orders', (db, permit, entered, env) =>
      placeOrder(db, permit, { ...entered, order: placed }, env),
    );
    if (slipDays === undefined) return [placing];
    const told = { atMs: calendar.at(placedOffset + promisedDays - 4, 905), by, name: `slip ${id}` };
    const expectedOnDay = calendar.day(placedOffset + promisedDays + slipDays);
    const slip = act(
      { ...told, reason: 'The supplier called: it comes later.' },
      'keep-orders',
      (db, permit, entered, env) =>
        slipOrder(db, permit, { ...entered, orderId: id, expectedOnDay, onDay: dayOfMs(told.atMs) }, env),
    );
    return [placing, slip];
  });
}
