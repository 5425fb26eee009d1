import { addDays, type Day } from '../calendar/day';
import type { LineVerdict } from '../capability/line-verdict';
import { leadDaysWithin } from '../lead-time/lead-time-belief';
import { beliefOf, RECEIVING_DAYS } from '../outlook/order-arrivals';
import { requiredProbability } from '../outlook/plan-facts';
import type { LineFacts, ShopFacts } from '../outlook/shop-facts';
import { waysOut } from '../outlook/ways-out';

import type { Part } from '../shop/part';
import type { Role } from '../shop/vocabulary';
import { compareText } from '../text/compare-text';

/** Something of a complete set that the shop does not have and has not ordered: a guide, a ring, a collet. */
export interface MissingPart {
  readonly role: Role;
  readonly connectionId: string;
  /** The part to buy; null where the shop's list has none for this size. */
  readonly part: Part | null;
  readonly lineIds: readonly string[];
  /** Start of the first line that needs it. */
  readonly neededOnDay: Day;
  /** Days until it is on the shelf as surely as the shop asks; null without a lead time. */
  readonly leadDays: number | null;
  readonly orderByOnDay: Day | null;
}

const EDGES_AND_FLUID: readonly Role[] = ['blade', 'die', 'fluid'];

/**
 * The shopping list of whole items that lines of the plan are stopped for: once to an item and size, the soonest first.
 * Edges are in `orderProposals`, fluids in `fluidNeeds`. What is on order already is not listed.
 */
export function missingParts(facts: ShopFacts, verdicts: readonly LineVerdict[]): MissingPart[] {
  const lines = new Map(facts.lines.map((line) => [line.id, line]));
  const found = new Map<string, MissingPart>();
  for (const verdict of verdicts) {
    const line = lines.get(verdict.lineId);
    for (const blocker of verdict.blockers) {
      const { kind, role, clearsOnDay } = blocker;
      if (line === undefined || role === null || clearsOnDay !== null) continue;
      if (kind !== 'missing' || EDGES_AND_FLUID.includes(role)) continue;
      const order = waysOut(blocker, line, facts).find((way) => way.kind === 'place-order');
      const part = order?.kind === 'place-order' ? order.part : null;
      const key = `${role} ${part?.id ?? line.connectionId}`;
      const before = found.get(key);
      const neededOnDay =
        [before?.neededOnDay ?? line.startOnDay, line.startOnDay].sort()[0] ?? line.startOnDay;
      const lineIds = [...(before?.lineIds ?? []), line.id];
      found.set(key, {
        ...{ role, connectionId: line.connectionId, part, lineIds, neededOnDay },
        ...timing(facts, part, neededOnDay, surest(lineIds, lines)),
      });
    }
  }
  return [...found.values()].sort((a, b) => compareText(a.neededOnDay, b.neededOnDay));
}

/** Precious where one of the lines is: what is bought for several must come as surely as the most precious asks. */
function surest(lineIds: readonly string[], lines: ReadonlyMap<string, LineFacts>): LineFacts['value'] {
  return lineIds.some((id) => lines.get(id)?.value === 'precious') ? 'precious' : 'ordinary';
}

function timing(facts: ShopFacts, part: Part | null, neededOnDay: Day, value: LineFacts['value']) {
  if (part === null || part.leadTimeDays === null) return { leadDays: null, orderByOnDay: null };
  const service = requiredProbability(facts.shop, value);
  const quoted = Math.max(1, part.leadTimeDays);
  const leadDays =
    Math.ceil(leadDaysWithin(beliefOf(facts, part.supplier), quoted, service)) + RECEIVING_DAYS;
  return { leadDays, orderByOnDay: addDays(neededOnDay, -leadDays) };
}
