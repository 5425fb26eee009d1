import type { Role } from '../../shop/vocabulary';
import type { WayQuestion } from './ask-way';
import { buyWay } from './buy-way';
import { laterStartWay, splitWay } from './date-ways';
import { mendWay, regrindWay } from './mend-ways';
import type { PricedWay } from './priced-way';

/**
 * The ways to make one line that cannot be made as it stands, or is at risk: mend what the shop has, buy what is missing,
 * regrind a blade, start later, make some of the ends now. Each is tried on the plan's own futures. Those that make the
 * line come first, the cheapest on top, then what is free but takes a later day; what has no price stands last among
 * its like. Empty for a line that can be made.
 */
export function pricedWays(question: WayQuestion): PricedWay[] {
  const { verdict } = question;
  if (verdict.verdict === 'can-make') return [];
  const isUnknown = verdict.blockers.some(({ role }) => role === null);
  const ways = [
    mendWay(question),
    buyWay(question, rolesInTheWay(question)),
    regrindWay(question),
    ...(isUnknown ? [] : [splitWay(question), laterStartWay(question)]),
  ];
  return ways.filter((way) => way !== undefined).sort(compareWays);
}

/** Every role that something is in the way of, most limiting first. */
export function rolesInTheWay({ verdict }: Pick<WayQuestion, 'verdict'>): Role[] {
  return [...new Set(verdict.blockers.flatMap(({ role }) => role ?? []))];
}

const RANK = { 'can-make': 0, 'at-risk': 1, 'cannot-make-now': 2 } as const;

function compareWays(a: PricedWay, b: PricedWay): number {
  if (a.verdict !== b.verdict) return RANK[a.verdict] - RANK[b.verdict];
  if (waits(a) !== waits(b)) return waits(a) ? 1 : -1;
  if (a.costMinor === b.costMinor) return 0;
  if (a.costMinor === null || b.costMinor === null) return a.costMinor === null ? 1 : -1;
  return a.costMinor - b.costMinor;
}

/** Whether the line keeps its dates and its ends. */
function waits({ changes }: PricedWay): boolean {
  return changes.some(({ kind }) => kind === 'change-dates' || kind === 'change-ends');
}
