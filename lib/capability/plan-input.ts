import type { Day } from '../calendar/day';
import type { Duty } from '../shop/duty';
import type { Chlorinated } from '../shop/fluid-lot';
import type { Hand, Operation, Role, ToolState } from '../shop/vocabulary';

/** Connections that an item serves, by id; 'all' for what is not size-bound (brush, deburring tool, fluid). */
export type Fits = readonly string[] | 'all';

/** One marked thing of the shop, as far as the plan cares. */
export interface SetItem {
  readonly toolId: string;
  readonly partId: string;
  readonly role: Role;
  /** Die and rings: must match the connection. Unmarked counts as a mismatch. */
  readonly hand?: Hand | undefined;
  readonly fitsConnectionIds: Fits;
  readonly state: ToolState;
  /** First day on which it is to be back and usable (issue, regrind, calibration). A day already past is no date. */
  readonly backOnDay?: Day | null | undefined;
  /** The line that it is issued to. It serves that line now, others from the day after the line is due. */
  readonly heldForLineId?: string | null | undefined;
  /** In the crib, but kept for one line through a day: it serves others from the day after. */
  readonly reservation?: { readonly jobLineId: string; readonly untilDay: Day } | null | undefined;
  /** Calibration: valid to the END of this day. A calibrated role without one counts as out of calibration. */
  readonly dueOnDay?: Day | null | undefined;
  /** Fluid: the earlier of shelf life and opened life, usable to the end of this day. None: does not expire. */
  readonly expiresOnDay?: Day | null | undefined;
  /** Fluid: what is left. A level nobody has read counts as nothing. */
  readonly levelMl?: number | null | undefined;
  /** Fluid: materials it is permitted on. None stated: permitted on nothing. */
  readonly permittedMaterialIds?: readonly string[] | 'all' | undefined;
  /** Fluid: services it is permitted for. None stated: ordinary service only. */
  readonly permittedDuties?: readonly Duty[] | undefined;
  /** Fluid: chlorinated or not known keeps it off titanium. Not stated counts as not known. */
  readonly chlorinated?: Chlorinated | undefined;
  /** Fluid: its day without any extension, which alone counts for oxygen. */
  readonly labelledUseByDay?: Day | null | undefined;
  /** An edge that has cut nothing yet. */
  readonly isUnused?: boolean | undefined;
  /** Back from regrind or adjusted: not to be used before its first-off has passed. */
  readonly needsFirstOff?: boolean | undefined;
}

/** Work that wears edges: base exposure of one end, turns for the thread, mm³ for the cone. */
export interface EndDemand {
  readonly exposurePerEnd: { readonly cone?: number | undefined; readonly thread?: number | undefined };
  readonly fluidMlPerEnd: number;
}

/** One line of the plan: so many ends of one connection in one material, between two days (both included). */
export interface PlanLine extends EndDemand {
  readonly lineId: string;
  readonly jobId: string;
  readonly connectionId: string;
  readonly materialId: string;
  /** Ends still to make. 0: nothing left to do, so it needs and holds nothing. */
  readonly endsToMake: number;
  /** Cones and threads still to cut, where one of them is ahead of the other. Absent: as many as ends to make. */
  readonly cutsLeft?: { readonly cone: number; readonly thread: number } | undefined;
  readonly operations: readonly Operation[];
  readonly startOnDay: Day;
  readonly dueOnDay: Day;
  /** What the tube will carry. Absent: ordinary service. */
  readonly duty?: Duty | undefined;
  /** The material is titanium: no chlorinated fluid, own brushes. */
  readonly titanium?: boolean | undefined;
  /** How sure the shop wants to be for this line; a spool that cannot be remade asks for more. Default in `targets`. */
  readonly requiredProbability?: number | undefined;
  /** It cannot be remade: an edge that is done in mid-line spoils it. Asks for one sure edge, or a new one. */
  readonly cannotBeRemade?: boolean | undefined;
  /** A question, not work: asked after every line of the plan, whatever its dates, and takes and holds nothing. */
  readonly asksOnly?: boolean | undefined;
}

/** A row of the shop's connection table. A line whose connection has no row is refused, never guessed. */
export interface PlanConnection {
  readonly connectionId: string;
  readonly hand: Hand;
}

/** What an open order will bring, receiving check already counted in the day. */
export interface Arrival {
  readonly orderId: string;
  readonly partId: string;
  readonly role: Role;
  readonly hand?: Hand | undefined;
  readonly fitsConnectionIds: Fits;
  /** Pieces; for fluid, containers of `levelMl` each. */
  readonly quantity: number;
  /** First day on which it can be used. A day already past is no date: without drawn days it counts for nothing. */
  readonly expectedOnDay: Day;
  /**
   * The same day drawn, one figure per draw of the ensemble: whole days from today, receiving check counted in.
   * 0 or less: there today. Infinity: it does not come in that draw. Where given, it goes before `expectedOnDay`: lives
   * count from the draw's own day, yes-or-no needs from the day by which it is there in the required share of draws.
   */
  readonly arrivalDayDraws?: ArrayLike<number> | undefined;
  readonly levelMl?: number | undefined;
  readonly permittedMaterialIds?: readonly string[] | 'all' | undefined;
  readonly permittedDuties?: readonly Duty[] | undefined;
  readonly chlorinated?: Chlorinated | undefined;
  readonly expiresOnDay?: Day | null | undefined;
}

/** When a line counts as "can make", and below what it counts as "cannot". */
export interface PlanTargets {
  readonly requiredProbability: number;
  readonly floorProbability: number;
}

/** 0.9 and 0.5: a proposal for the shop to set, common practice, no source. */
export const DEFAULT_TARGETS: PlanTargets = { requiredProbability: 0.9, floorProbability: 0.5 };
