import { invariant } from '../invariant';
import type { Role } from '../shop/vocabulary';
import { firmArrivalDay } from './arrival-day';
import type { SetNeed } from './complete-set';
import { fluidStanding, objectionTo } from './fluid-standing';
import { itemStanding, type Standing, type StandingContext } from './item-standing';
import type { QueuedLine } from './line-order';
import { type Arrival, DEFAULT_TARGETS, type Fits, type SetItem } from './plan-input';

/** One piece that could meet a need: a marked tool of the shop, or a piece on order (no tool id yet). */
export interface Candidate {
  readonly id: string;
  readonly toolId: string | null;
  readonly partId: string;
  readonly role: Role;
  readonly fits: Fits;
  /** Of a piece on order: how many of its part are on order before it. Null for a tool. */
  readonly newIndex: number | null;
  /** For a piece on order whose day is drawn: whole days from today, per draw. Null for all others. */
  readonly arrivalDayDraws: ArrayLike<number> | null;
  readonly levelMl: number;
  /** An edge that has cut nothing yet. */
  readonly isUnused: boolean;
  /** Null when the piece is no way to meet this need at all. */
  standing(line: QueuedLine, need: SetNeed): Standing | null;
}

/** More pieces of one order line than this add nothing to any plan that a shop can read. */
const PIECES_MAX = 200;

/**
 * Every tool and every piece on order as candidates, in an order that does not depend on how they were listed. Scrapped
 * and lost tools, and orders already late with no drawn day, are left out. New pieces are numbered by order id, not by day, so that a
 * date that slips does not deal the lives out anew.
 */
export function listCandidates(
  items: readonly SetItem[],
  arrivals: readonly Arrival[],
  context: StandingContext,
): Candidate[] {
  const here = items
    .filter(({ state }) => state !== 'scrapped' && state !== 'lost')
    .sort((a, b) => (a.toolId < b.toolId ? -1 : 1));
  const coming = [...arrivals].sort((a, b) =>
    a.orderId === b.orderId ? (a.partId < b.partId ? -1 : 1) : a.orderId < b.orderId ? -1 : 1,
  );
  const counts = new Map<string, number>();
  return [
    ...here.map((item) => toolCandidate(item, context)),
    ...coming.flatMap((arrival) => arrivalCandidates(arrival, context, counts)),
  ];
}

function toolCandidate(item: SetItem, context: StandingContext): Candidate {
  const isFluid = item.role === 'fluid';
  return {
    id: item.toolId,
    toolId: item.toolId,
    partId: item.partId,
    role: item.role,
    fits: item.fitsConnectionIds,
    newIndex: null,
    arrivalDayDraws: null,
    levelMl: Math.max(0, item.levelMl ?? 0),
    isUnused: item.isUnused === true,
    standing: (line, need) =>
      isFluid ? fluidStanding(item, line, context.today) : itemStanding(item, need, line, context),
  };
}

function arrivalCandidates(
  arrival: Arrival,
  context: StandingContext,
  counts: Map<string, number>,
): Candidate[] {
  const { orderId, partId, role, quantity, arrivalDayDraws = null } = arrival;
  invariant(Number.isInteger(quantity) && quantity >= 0, 'an arrival needs a whole quantity');
  const first = counts.get(partId) ?? 0;
  counts.set(partId, first + quantity);
  if (arrivalDayDraws === null && arrival.expectedOnDay < context.today) return [];
  return Array.from({ length: Math.min(quantity, PIECES_MAX) }, (_, piece) => ({
    id: `${orderId}/${partId}/${piece}`,
    toolId: null,
    partId,
    role,
    fits: arrival.fitsConnectionIds,
    newIndex: first + piece,
    arrivalDayDraws,
    levelMl: Math.max(0, arrival.levelMl ?? 0),
    isUnused: true,
    standing: (line: QueuedLine, need: SetNeed) => arrivalStanding(arrival, line, need, context),
  }));
}

function arrivalStanding(
  arrival: Arrival,
  line: QueuedLine,
  need: SetNeed,
  { today, requiredProbability = DEFAULT_TARGETS.requiredProbability }: StandingContext,
): Standing | null {
  if (need.handBound && arrival.hand !== line.hand) return null;
  if (arrival.role === 'fluid' && !fluidArrivalServes(arrival, line)) return null;
  const probability = line.line.requiredProbability ?? requiredProbability;
  const freeFromDay = firmArrivalDay(arrival, probability, today);
  const isThere = freeFromDay !== null && freeFromDay <= line.startOnDay;
  return { freeFromDay, obstacle: isThere ? null : { kind: 'missing' } };
}

function fluidArrivalServes(arrival: Arrival, { line, dueOnDay }: QueuedLine): boolean {
  const expiresOnDay = arrival.expiresOnDay ?? null;
  return objectionTo(arrival, line) === null && (expiresOnDay ?? dueOnDay) >= dueOnDay;
}
