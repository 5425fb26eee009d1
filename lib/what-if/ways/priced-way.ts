import type { Day } from '../../calendar/day';
import type { Verdict } from '../../capability/line-verdict';
import type { PartOffer } from '../../orders/part-offers';
import type { Part } from '../../shop/part';
import type { Role } from '../../shop/vocabulary';
import type { Change } from '../change';

/** One thing to do. A way out may take several. */
export type WayAction =
  | {
      readonly kind: 'order';
      readonly part: Part;
      /** From whom, on which terms. */
      readonly offer: PartOffer;
      readonly quantity: number;
      /** Last day to order it for the line's start, as sure as the line asks. Null: no lead time written down. */
      readonly orderByDay: Day | null;
      /** Ordered today it is there by this day, as surely. */
      readonly thereOnDay: Day | null;
    }
  /** Nothing of this kind stands in the shop's list of parts. */
  | { readonly kind: 'find-part'; readonly role: Role }
  | { readonly kind: 'calibrate'; readonly toolId: string }
  /** Back from loan, out of quarantine, or its first-off gauged. */
  | { readonly kind: 'free'; readonly toolId: string }
  | { readonly kind: 'regrind'; readonly toolId: string; readonly backOnDay: Day }
  | { readonly kind: 'new-edge'; readonly toolId: string }
  | { readonly kind: 'start'; readonly startOnDay: Day; readonly dueOnDay: Day }
  | { readonly kind: 'split'; readonly endsNow: number; readonly endsLater: number };

/** A way to make a line, with what it costs and what the plan check says of it. */
export interface PricedWay {
  readonly actions: readonly WayAction[];
  /** The same as changes to try. */
  readonly changes: readonly Change[];
  /** What it costs, in minor units; null where a price is not written down. */
  readonly costMinor: number | null;
  /** The line with this done. */
  readonly verdict: Verdict;
  readonly pMade: number;
}

/** The better answer first. */
export const VERDICT_RANK: Record<Verdict, number> = { 'can-make': 0, 'at-risk': 1, 'cannot-make-now': 2 };
