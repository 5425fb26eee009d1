import { ORDER_HORIZON_DAYS } from '@/lib/orders/order-proposals';

/** Weeks that orders may look ahead. */
export const HORIZON_WEEKS = [4, 6, 8, 12, 26] as const;

/** The horizon that an address or a form asks for, in days; the usual one where it asks for none that is offered. */
export function horizonOf(weeks: unknown): number {
  const asked = HORIZON_WEEKS.find((known) => String(known) === weeks);
  return asked === undefined ? ORDER_HORIZON_DAYS : asked * 7;
}
