import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { capital } from '@/lib/text/capital';
import type { PricedWay, WayAction } from '@/lib/what-if/ways/priced-way';
import { count, dayText, inDays, listWords } from '../format';

/** What to do, in one sentence: "Order 2 × 3⁄8 die by Fri 27 Nov, and calibrate G-38-GO-1". */
export function wayWords({ actions }: Pick<PricedWay, 'actions'>, today: string): string {
  const unlisted = actions.flatMap((action) =>
    action.kind === 'find-part' ? [ROLE_LABEL[action.role]] : [],
  );
  const rest = actions.filter(({ kind }) => kind !== 'find-part').map((action) => actionWords(action, today));
  const find =
    unlisted.length > 0 ? [`find a supplier for ${listWords(unlisted)}: not in the list of parts`] : [];
  return capital(listWords([...rest, ...find]));
}

function actionWords(action: WayAction, today: string): string {
  switch (action.kind) {
    case 'order': {
      const { quantity, part, offer, orderByDay, thereOnDay } = action;
      const what = `order ${quantity} × ${part.name}${offer.supplier === '' ? '' : ` from ${offer.supplier}`}`;
      if (thereOnDay === null || orderByDay === null) return `${what} (no lead time written down)`;
      const when =
        orderByDay < today
          ? `today, sure enough there by ${dayText(thereOnDay, today)}`
          : `by ${dayText(orderByDay, today)}`;
      return `${what} ${when}`;
    }
    case 'find-part':
      return `find a supplier for a ${ROLE_LABEL[action.role]}`;
    case 'calibrate':
      return `send ${action.toolId} for calibration now`;
    case 'free':
      return `clear ${action.toolId} for use, if it is fit`;
    case 'regrind':
      return `send ${action.toolId} for a regrind, back ${dayText(action.backOnDay, today)}`;
    case 'new-edge':
      return `use ${action.toolId}, after a practice end`;
    case 'start':
      return `start ${inDays(action.startOnDay, today)}, due ${dayText(action.dueOnDay, today)}`;
    case 'split':
      return `make ${count(action.endsNow, 'end')} now, the other ${action.endsLater} when there are more edges`;
  }
}
