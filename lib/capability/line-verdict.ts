import type { Day } from '../calendar/day';
import type { EdgeKind, Role } from '../shop/vocabulary';
import type { Blocker } from './blocker';
import type { EdgePolicy } from './value-policy';

export type Verdict = 'can-make' | 'at-risk' | 'cannot-make-now';

export interface LineVerdict {
  readonly lineId: string;
  readonly jobId: string;
  readonly verdict: Verdict;
  /** No hard blocker in the cutting. Lives are in `pMade`. */
  readonly canCut: boolean;
  /** No hard blocker in the acceptance: gauges there and in date through the due day. */
  readonly canAccept: boolean;
  /**
   * Share of futures in which the edges last for every end of this line, after the lines before it have cut theirs.
   * About lives only: what else is missing stands in `blockers`. A future in which no edge is there on the first day counts
   * as one in which it is not; 0 when nothing is known.
   */
  readonly pMade: number;
  /** Most limiting first. */
  readonly blockers: readonly Blocker[];
  /** The day on which every blocker is clear; null when there is none to clear or one of them has no date. */
  readonly clearsOnDay: Day | null;
  /** Most ends with at least the required probability, and with even chances. Null when the line cuts nothing. */
  readonly safeEnds: number | null;
  readonly likelyEnds: number | null;
  /** Role of the most limiting blocker, else the edge that would run out first. */
  readonly limitingRole: Role | null;
  /** Of the two edges, the one with fewer ends in it. Null when the line cuts nothing. */
  readonly shorterEdge: EdgeKind | null;
  /** For a line that cannot be remade: the two ways that each kind of edge has. Absent for all others. */
  readonly valuePolicy?: readonly EdgePolicy[];
}
