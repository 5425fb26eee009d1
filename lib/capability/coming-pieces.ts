import type { Day } from '../calendar/day';
import type { Role, ToolState } from '../shop/vocabulary';
import type { Candidate } from './candidates';
import { claimByRole } from './line-claims';
import type { QueuedLine } from './line-order';
import type { NeedStatus } from './need-status';
import type { SetItem } from './plan-input';

/** A piece that a line can use in time, and that is not here today. */
export interface ComingPiece {
  /** Null for a piece on order. */
  readonly toolId: string | null;
  /** First day on which it can be used, as far as is known. */
  readonly fromDay: Day;
  /** Where it is until then. In the crib: kept there for another line. */
  readonly where: ToolState | 'on-order';
  /** The line that has it until then; null on loan, at the laboratory, at the grinder, on order. */
  readonly lineId: string | null;
}

/** The pieces of one need that are usable by the line's start and not here today, the soonest first. */
export function comingPieces(
  { pieces }: Pick<NeedStatus, 'pieces'>,
  items: readonly SetItem[],
  today: Day,
): ComingPiece[] {
  return pieces
    .flatMap(({ candidate, standing: { freeFromDay, obstacle } }): ComingPiece[] => {
      if (obstacle !== null || freeFromDay === null || isHere(candidate, freeFromDay, today)) return [];
      const item = items.find(({ toolId }) => toolId === candidate.toolId);
      const lineId = item?.heldForLineId ?? item?.reservation?.jobLineId ?? null;
      return [{ toolId: candidate.toolId, fromDay: freeFromDay, where: item?.state ?? 'on-order', lineId }];
    })
    .sort((a, b) => (a.fromDay < b.fromDay ? -1 : a.fromDay > b.fromDay ? 1 : 0));
}

/** The plan made ready: its lines in queue order, how their needs stand, and which of them are cut. */
export interface ReadyPlan {
  readonly queue: readonly QueuedLine[];
  readonly statuses: readonly (readonly NeedStatus[])[];
  readonly goes: readonly boolean[];
}

/**
 * Whether a need of one line is met only by what is not here today: nothing that is here is usable, or the lines before it
 * that overlap with it have all of that. Domain: a need that is met.
 */
export function restsOnComing(
  { queue, statuses, goes }: ReadyPlan,
  at: number,
  role: Role,
  today: Day,
): boolean {
  const mine = statuses[at]?.find(({ need }) => need.role === role);
  if (mine === undefined || mine.usable.length === 0) return false;
  const here = mine.usable.filter((candidate) => isHere(candidate, freeFromDay(mine, candidate), today));
  if (here.length === mine.usable.length) return false;
  if (here.length === 0) return true;
  const onlyHere = statuses
    .slice(0, at + 1)
    .map((list, i) =>
      list
        .filter(({ need }) => need.role === role)
        .map((status) => (i === at ? { ...status, usable: here } : status)),
    );
  return claimByRole(queue.slice(0, at + 1), onlyHere, goes)[at]?.has(role) === true;
}

function freeFromDay({ pieces }: NeedStatus, candidate: Candidate): Day | null {
  return pieces.find((piece) => piece.candidate === candidate)?.standing.freeFromDay ?? null;
}

/** A marked tool that could be used today. */
function isHere({ toolId }: Candidate, freeFromDay: Day | null, today: Day): boolean {
  return toolId !== null && freeFromDay !== null && freeFromDay <= today;
}
