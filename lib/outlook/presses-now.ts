import { daysBetween } from '../calendar/day';
import type { Blocker } from '../capability/blocker';
import type { LineVerdict } from '../capability/line-verdict';
import type { LineFacts, ShopFacts } from './shop-facts';
import { partsFor } from './ways-out';

/** Work that starts so soon presses whatever it waits for. Common practice, no source. */
export const THIS_WEEK_DAYS = 7;

/** What an order takes where nobody has written it down. Common practice, no source: ask the supplier. */
export const UNKNOWN_LEAD_DAYS = 14;

/**
 * Whether a line that cannot be made, or is at risk, presses today: it starts within a week, or the last day to order what it
 * lacks is here or has passed. Formula: start − today ≤ max(7, lead), in days; lead: the longest that one of its
 * blockers takes by the quickest supplier on the shop's list, 14 where none is on it; a blocker that clears by the start by
 * itself asks for no order. For the order of the front page.
 */
export function pressesNow(
  line: LineFacts,
  { blockers }: Pick<LineVerdict, 'blockers'>,
  facts: ShopFacts,
): boolean {
  const leads = blockers.map((blocker) => leadDays(blocker, line, facts));
  return daysBetween(facts.today, line.startOnDay) <= Math.max(THIS_WEEK_DAYS, ...leads);
}

function leadDays(blocker: Blocker, line: LineFacts, facts: ShopFacts): number {
  if (blocker.clearsOnDay !== null && blocker.clearsOnDay <= line.startOnDay) return 0;
  const parts = blocker.role === null ? [] : partsFor(blocker.role, line, facts);
  const quoted = parts
    .flatMap(({ leadTimeDays, offers }) => [leadTimeDays, ...(offers ?? []).map((one) => one.leadTimeDays)])
    .filter((days) => days !== null);
  return quoted.length === 0 ? UNKNOWN_LEAD_DAYS : Math.min(...quoted);
}
