import type { Day } from '../calendar/day';
import type { FluidObjection } from '../fluid/permit-fluid';
import type { EdgeKind, Hand, Role } from '../shop/vocabulary';
import type { NeedPhase } from './complete-set';
import type { EdgePolicy } from './value-policy';

/** Why one need is not met. One blocker per role and kind; several kinds for one role when its tools fail variously. */
export type BlockerReason =
  | { readonly kind: 'unknown-connection' }
  | { readonly kind: 'unknown-material' }
  /** None exists in the shop, or none of the right hand. */
  | { readonly kind: 'missing' }
  /** There is one, of the wrong hand or unmarked. */
  | { readonly kind: 'hand-mismatch'; readonly wanted: Hand }
  | { readonly kind: 'quarantined' }
  | { readonly kind: 'needs-first-off' }
  | { readonly kind: 'out-for-regrind'; readonly backOnDay: Day | null }
  | { readonly kind: 'out-for-calibration'; readonly backOnDay: Day | null }
  /** Out with another line (issued or wanted by a line before this one), or on loan (lineId null). */
  | { readonly kind: 'held-elsewhere'; readonly lineId: string | null; readonly untilDay: Day | null }
  /** The latest due day among them; null when none has a calibration date on record. */
  | { readonly kind: 'calibration-lapses'; readonly dueOnDay: Day | null }
  /** Why: its list leaves the material out, chlorine on titanium, or the service is not flagged. */
  | { readonly kind: 'fluid-not-permitted'; readonly why: FluidObjection }
  | { readonly kind: 'fluid-expired'; readonly expiresOnDay: Day }
  | { readonly kind: 'fluid-short'; readonly haveMl: number; readonly needMl: number }
  /** Share of futures in which this kind of edge lasts for the line, and its ends: safe and likely. */
  | {
      readonly kind: 'life-short';
      readonly pMade: number;
      readonly safeEnds: number;
      readonly likelyEnds: number;
    }
  /** The line cannot be remade: no one edge is sure enough to cut all of it, and none is new. The surest one's chance. */
  | { readonly kind: 'no-sure-edge'; readonly pFinishes: number };

export type BlockerKind = BlockerReason['kind'];

export type Blocker = BlockerReason & {
  /** Null when it is the line itself that is refused (no table row, unknown material). */
  readonly role: Role | null;
  readonly phase: NeedPhase;
  /** A yes/no need. Lives are soft: a matter of probability. */
  readonly hard: boolean;
  readonly toolIds: readonly string[];
  /** The first day on which the need of this role is met by a known return or arrival; null when none is known. */
  readonly clearsOnDay: Day | null;
  /** 1 is the most limiting. */
  readonly rank: number;
};

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
