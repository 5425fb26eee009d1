import 'server-only';
import type { DueDate } from '@/lib/due-dates/due-date';
import { listDueDates } from '@/lib/due-dates/list-due-dates';
import { orderProposals } from '@/lib/orders/order-proposals';
import type { Outlook } from '@/lib/outlook/outlook';
import { shopReplacement } from '@/lib/replacement/shop-replacement';

/** Everything of the shop that falls due on a day, estimated days counted over the outlook's futures. */
export function shopDueDates({ facts, ensemble }: Outlook): DueDate[] {
  const { tools: toolPlans } = shopReplacement(facts, ensemble);
  const orderBy = orderProposals(facts, ensemble).flatMap(({ part, quantity, orderByOnDay }) =>
    orderByOnDay === null ? [] : [{ partId: part.id, quantity, orderByDay: orderByOnDay }],
  );
  return listDueDates(facts, { toolPlans, orderBy });
}
