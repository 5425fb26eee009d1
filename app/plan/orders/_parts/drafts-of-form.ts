import { number } from '@/app/_server/form-fields';
import { nextOrderIds } from '@/lib/orders/next-order-id';
import { type OrderLine, orderBook } from '@/lib/orders/order-lines';
import type { Outlook } from '@/lib/outlook/outlook';
import { horizonOf } from './horizon';

/** What was ticked, each once. */
export function pickedIds(form: FormData): string[] {
  return [...new Set(form.getAll('pick').filter((value): value is string => typeof value === 'string'))];
}

/** What was ticked with the quantities typed: the same at every sending of one form. */
function askedOfForm(form: FormData): { partId: string; quantity: number | undefined }[] {
  return pickedIds(form).map((partId) => ({ partId, quantity: number(form, `quantity:${partId}`) }));
}

/**
 * What a form asks for, and the drafts that make it so: one for each part that was ticked and is still to be ordered; zod
 * judges them afterwards.
 */
export function draftsOfForm(form: FormData, outlook: Outlook, orderIds: readonly string[]) {
  const asked = askedOfForm(form);
  const { toOrder } = orderBook(outlook, horizonOf(form.get('weeks')));
  const ids = nextOrderIds(orderIds, asked.length);
  const drafts = asked.flatMap(({ partId, quantity }, at) => {
    const line = toOrder.find(({ part }) => part.id === partId);
    return line === undefined ? [] : [draftOf(line, ids[at] ?? '', quantity, outlook)];
  });
  return { asked, drafts };
}

function draftOf(line: OrderLine, id: string, typed: number | undefined, outlook: Outlook) {
  const { part, offer, priceMinor, lineIds, shown } = line;
  return {
    ...{ id, partId: part.id, quantity: typed, draftedOnDay: outlook.facts.today },
    supplier: offer.supplier,
    unitPriceMinor: priceMinor === null ? null : Math.round(priceMinor / line.quantity),
    leadTimeDays: offer.leadTimeDays,
    why: lineIds.join(', ').slice(0, 300),
    ...(shown === undefined ? {} : { shown }),
  };
}
