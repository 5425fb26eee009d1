import { number } from '@/app/_server/form-fields';
import { nextOrderIds } from '@/lib/orders/next-order-id';
import { type OrderLine, orderBook } from '@/lib/orders/order-lines';
import type { Outlook } from '@/lib/outlook/outlook';
import { horizonOf } from './horizon';

/** What was ticked, each once. */
export function pickedIds(form: FormData): string[] {
  return [...new Set(form.getAll('pick').filter((value): value is string => typeof value === 'string'))];
}

/** The drafts that a form asks for: the lines that were ticked, with the quantities typed; zod judges them afterwards. */
export function draftsOfForm(form: FormData, outlook: Outlook, orderIds: readonly string[]): unknown[] {
  const picked = new Set(pickedIds(form));
  const lines = orderBook(outlook, horizonOf(form.get('weeks'))).toOrder.filter(({ part }) =>
    picked.has(part.id),
  );
  const ids = nextOrderIds(orderIds, lines.length);
  return lines.map((line, at) =>
    draftOf(line, ids[at] ?? '', number(form, `quantity:${line.part.id}`), outlook),
  );
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
