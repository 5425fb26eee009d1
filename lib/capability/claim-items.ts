import { addDays, type Day } from '../calendar/day';
import type { Candidate } from './candidates';

/** A line in the queue for pieces of one role. */
export interface Claim {
  readonly lineId: string;
  readonly startOnDay: Day;
  readonly dueOnDay: Day;
  readonly usable: readonly Candidate[];
  /** False for a stopped line: it is told who has the pieces, and takes none from the lines after it. */
  readonly holds: boolean;
}

/** Why a claim is not met: which lines before it have the pieces, and from which day one of them is free again. */
export interface ClaimRefusal {
  readonly heldByLineId: string;
  readonly untilDay: Day;
  readonly clearsOnDay: Day;
  readonly toolIds: readonly string[];
}

/**
 * Who gets a body, a guide, a gauge or a die when dates overlap: one holder at a time, in the order of the queue.
 * A claim is met when the lines before it that are still running on its first day, and it, can all be given a piece
 * each, or at least it without taking from any that could: maximum matching with it greater than without it. A line
 * before it keeps its place even when something else holds it up.
 * Since the queue is in start order, the first day is the one on which most lines before it are still running.
 * `claims` in queue order. Returns one entry per claim: null when met.
 */
export function claimItems(claims: readonly Claim[]): (ClaimRefusal | null)[] {
  return claims.map((claim, i) => {
    if (claim.usable.length === 0) return null;
    const running = claims.slice(0, i).filter((other) => other.holds && overlap(other, claim));
    if (claim.usable.length > running.length) return null;
    const holder = new Map<string, Claim>();
    for (const other of running) findPiece(other, holder, new Set());
    const asked = new Set<string>();
    return findPiece(claim, holder, asked) ? null : refusal(claim, holder, asked);
  });
}

/** A line that only asks may start before lines that stand before it in the queue. */
function overlap(a: Claim, b: Claim): boolean {
  return a.dueOnDay >= b.startOnDay && a.startOnDay <= b.dueOnDay;
}

/** Augmenting path (Kuhn): a free piece, or one whose holder can move to another. `asked` collects what was tried. */
function findPiece(claim: Claim, holder: Map<string, Claim>, asked: Set<string>): boolean {
  for (const { id } of claim.usable) {
    if (asked.has(id)) continue;
    asked.add(id);
    const other = holder.get(id);
    if (other === undefined || findPiece(other, holder, asked)) {
      holder.set(id, claim);
      return true;
    }
  }
  return false;
}

function refusal(claim: Claim, holder: ReadonlyMap<string, Claim>, asked: ReadonlySet<string>): ClaimRefusal {
  let first: Claim = claim;
  for (const id of asked) {
    const other = holder.get(id);
    if (other && (first === claim || comesFree(other, first))) first = other;
  }
  const toolIds = claim.usable.flatMap(({ toolId }) => (toolId === null ? [] : [toolId]));
  const untilDay = first.dueOnDay;
  return { heldByLineId: first.lineId, untilDay, clearsOnDay: addDays(untilDay, 1), toolIds };
}

function comesFree(a: Claim, b: Claim): boolean {
  return a.dueOnDay === b.dueOnDay ? a.lineId < b.lineId : a.dueOnDay < b.dueOnDay;
}
