import { dayText } from '@/app/_shared/format';
import type { OrderRow } from '@/db/queries/orders';

/** Where an order stands, in words. */
export function statusWords(order: OrderRow, today: string): string {
  switch (order.status) {
    case 'drafted':
      return 'drafted, waits for a lead’s yes';
    case 'approved':
      return 'approved, to be placed';
    case 'received':
      return `received in full${order.receivedOnDay === null ? '' : `, ${dayText(order.receivedOnDay, today)}`}`;
    case 'cancelled':
      return 'cancelled';
    default:
      return placedWords(order, today);
  }
}

function placedWords({ receivedQuantity, quantity, expectedOnDay }: OrderRow, today: string): string {
  const part = receivedQuantity === 0 ? 'on order' : `${receivedQuantity} of ${quantity} received`;
  return `${part}, expected ${dayText(expectedOnDay, today)}`;
}
