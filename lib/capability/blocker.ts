import type { Day } from '../calendar/day';
import type { FluidObjection } from '../fluid/permit-fluid';
import type { Hand, Role } from '../shop/vocabulary';
import type { NeedPhase } from './complete-set';

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
