import type { Day } from '../calendar/day';
import type { Candidate } from './candidates';
import type { SetNeed } from './complete-set';
import type { FindFitting } from './fitting-candidates';
import type { Standing } from './item-standing';
import type { QueuedLine } from './line-order';

/** How one need of one line stands, other lines apart. */
export interface NeedStatus {
  readonly need: SetNeed;
  /** Every piece that fits, and how it stands. */
  readonly pieces: readonly { readonly candidate: Candidate; readonly standing: Standing }[];
  /** Usable from the start through the due day. */
  readonly usable: readonly Candidate[];
  /** First day on which some piece is usable: the line's start when one is; null when none is known. */
  readonly clearsOnDay: Day | null;
}

/** How every need of a line stands: which pieces fit, which of them are usable, and else from which day one is. */
export function needStatuses(queued: QueuedLine, findFitting: FindFitting): NeedStatus[] {
  return queued.needs.map((need) => {
    const pieces = findFitting(need.role, queued.line.connectionId).flatMap((candidate) => {
      const standing = candidate.standing(queued, need);
      return standing === null ? [] : [{ candidate, standing }];
    });
    const usable = pieces.filter(({ standing }) => standing.obstacle === null).map((p) => p.candidate);
    return {
      need,
      pieces,
      usable,
      clearsOnDay: usable.length > 0 ? queued.startOnDay : firstFreeDay(pieces),
    };
  });
}

/** Cutting cannot begin and nobody knows when it could: the line then holds nothing back from the lines after it. */
export function isStopped(statuses: readonly NeedStatus[]): boolean {
  return statuses.some(({ need, clearsOnDay }) => need.phase === 'cut' && clearsOnDay === null);
}

function firstFreeDay(pieces: NeedStatus['pieces']): Day | null {
  let first: Day | null = null;
  for (const { standing } of pieces) {
    const day = standing.freeFromDay;
    if (day !== null && (first === null || day < first)) first = day;
  }
  return first;
}
