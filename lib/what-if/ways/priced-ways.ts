import type { Role } from '../../shop/vocabulary';
import type { WayQuestion } from './ask-way';
import { buyWays, isNoWorse } from './buy-way';
import { laterStartWay, splitWay } from './date-ways';
import { mendWay, regrindWay } from './mend-ways';
import { type PricedWay, VERDICT_RANK } from './priced-way';

/**
 * The ways to make one line that cannot be made as it stands, or is at risk: mend what the shop has, buy what is missing,
 * regrind a blade, start later, make some of the ends now. Each is tried on the plan's own futures. Those that make the
 * line come first, the cheapest on top, then what is free but takes a later day; what has no price stands last among
 * its like. A second offer of a supplier stands beside the first only where no other way is as good, as soon and as cheap.
 * Empty for a line that can be made.
 */
export function pricedWays(question: WayQuestion): PricedWay[] {
  const { verdict } = question;
  if (verdict.verdict === 'can-make') return [];
  const isUnknown = verdict.blockers.some(({ role }) => role === null);
  const [buy, ...otherOffers] = buyWays(question, rolesInTheWay(question));
  const later = isUnknown ? undefined : laterStartWay(question);
  const whole = [mendWay(question), buy, regrindWay(question), later].filter((way) => way !== undefined);
  const worthMore = otherOffers.filter((other) => !whole.some((way) => isNoWorse(way, other, question)));
  const ways = [isUnknown ? undefined : splitWay(question), ...whole, ...worthMore];
  return ways.filter((way) => way !== undefined).sort(compareWays);
}

/** Every role that something is in the way of, most limiting first. */
export function rolesInTheWay({ verdict }: Pick<WayQuestion, 'verdict'>): Role[] {
  return [...new Set(verdict.blockers.flatMap(({ role }) => role ?? []))];
}

function compareWays(a: PricedWay, b: PricedWay): number {
  if (a.verdict !== b.verdict) return VERDICT_RANK[a.verdict] - VERDICT_RANK[b.verdict];
  if (waits(a) !== waits(b)) return waits(a) ? 1 : -1;
  if (a.costMinor === b.costMinor) return 0;
  if (a.costMinor === null || b.costMinor === null) return a.costMinor === null ? 1 : -1;
  return a.costMinor - b.costMinor;
}

/** Whether the line keeps its dates and its ends. */
function waits({ changes }: PricedWay): boolean {
  return changes.some(({ kind }) => kind === 'change-dates' || kind === 'change-ends');
}
