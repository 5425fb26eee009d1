import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { PlaceOrderForm } from '@/app/plan/orders/_parts/place-order-form';
import type { OrderRow } from '@/db/queries/orders';
import { addDays } from '@/lib/calendar';
import { offersOf } from '@/lib/orders/part-offers';
import type { Part } from '@/lib/shop/part';

/** The approved draft becomes an order: placed today, with the day that the supplier promises. */
export function PlaceDraft({
  order,
  part,
  today,
  stamp,
}: {
  readonly order: OrderRow;
  readonly part: Part;
  readonly today: string;
  readonly stamp: EntryStamp;
}) {
  const offer = offersOf(part).find(({ supplier }) => supplier === order.supplier);
  const leadTimeDays = offer?.leadTimeDays ?? part.leadTimeDays;
  return (
    <PlaceOrderForm
      partId={part.id}
      stamp={stamp}
      placedOnDay={today}
      expectedOnDay={leadTimeDays === null ? '' : addDays(today, leadTimeDays)}
      leadTimeDays={leadTimeDays}
      draft={{ id: order.id, quantity: order.quantity }}
      supplier={order.supplier}
      unitPriceMinor={order.unitPriceMinor}
    />
  );
}
