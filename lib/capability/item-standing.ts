import { addDays, type Day, daysBetween } from '../calendar/day';
import { CALIBRATED_ROLES } from '../shop/vocabulary';
import type { BlockerReason } from './blocker';
import type { SetNeed } from './complete-set';
import type { QueuedLine } from './line-order';
import type { SetItem } from './plan-input';

/** Where an item stands for one line: from which day it can be used (null: none known), and what is in the way. */
export interface Standing {
  readonly freeFromDay: Day | null;
  /** Null: usable from the line's start through its due day. */
  readonly obstacle: BlockerReason | null;
}

/** What the standing of an item depends on besides itself. */
export interface StandingContext {
  readonly today: Day;
  /** Last day of every line of the plan, by line id. */
  readonly lineDueOnDay: ReadonlyMap<string, Day>;
  /** How sure the shop wants to be that an order is there, for a line that states nothing itself. */
  readonly requiredProbability?: number | undefined;
}

/**
 * Whether one item that fits can serve one line, and if not, why not and until when. Says nothing of other lines that
 * want it too. The first that holds: wrong hand, quarantined, first-off not passed, calibration lapsing, not back.
 * A scrapped or lost item does not exist: callers leave it out. Fluid has rules of its own (`fluidStanding`).
 * Calibration is asked through the due day, moved on by as many days as the item comes late. An item out for
 * calibration comes back with a new date.
 */
export function itemStanding(
  item: SetItem,
  need: SetNeed,
  { startOnDay, dueOnDay, hand, line }: QueuedLine,
  context: StandingContext,
): Standing {
  if (need.handBound && item.hand !== hand) return barred({ kind: 'hand-mismatch', wanted: hand });
  if (item.state === 'quarantined') return barred({ kind: 'quarantined' });
  if (item.needsFirstOff === true) return barred({ kind: 'needs-first-off' });
  const freeFromDay = itemFreeFromDay(item, need, line.lineId, context);
  const late = freeFromDay !== null && freeFromDay > startOnDay ? daysBetween(startOnDay, freeFromDay) : 0;
  if (CALIBRATED_ROLES.includes(item.role) && item.state !== 'calibration') {
    const lapsesOnDay = item.dueOnDay ?? null;
    const lastDay = late > 0 ? addDays(dueOnDay, late) : dueOnDay;
    if (lapsesOnDay === null || lapsesOnDay < lastDay)
      return barred({ kind: 'calibration-lapses', dueOnDay: lapsesOnDay });
  }
  if (freeFromDay !== null && late === 0) return { freeFromDay, obstacle: null };
  return { freeFromDay, obstacle: absence(item, freeFromDay) };
}

function barred(obstacle: BlockerReason): Standing {
  return { freeFromDay: null, obstacle };
}

/** First day on which the item is free for the line; null when nobody knows. A return day already past is unknown. */
function itemFreeFromDay(item: SetItem, need: SetNeed, lineId: string, context: StandingContext): Day | null {
  const { today, lineDueOnDay } = context;
  if (item.state === 'in-crib') return keptForAnother(item, lineId, today) ?? today;
  if (item.state === 'issued' && (item.heldForLineId === lineId || !need.heldByLine)) return today;
  const backOnDay = item.backOnDay ?? null;
  if (backOnDay !== null) return backOnDay >= today ? backOnDay : null;
  const holderDueOnDay =
    item.state === 'issued' && item.heldForLineId ? lineDueOnDay.get(item.heldForLineId) : undefined;
  return holderDueOnDay === undefined ? null : addDays(holderDueOnDay, 1);
}

/** The day after an item in the crib is kept for another line; null where it is not. */
function keptForAnother({ reservation }: SetItem, lineId: string, today: Day): Day | null {
  if (reservation == null || reservation.jobLineId === lineId || reservation.untilDay < today) return null;
  return addDays(reservation.untilDay, 1);
}

function absence(item: SetItem, backOnDay: Day | null): BlockerReason {
  if (item.state === 'regrind') return { kind: 'out-for-regrind', backOnDay };
  if (item.state === 'calibration') return { kind: 'out-for-calibration', backOnDay };
  return {
    kind: 'held-elsewhere',
    lineId: item.heldForLineId ?? item.reservation?.jobLineId ?? null,
    untilDay: backOnDay === null ? null : addDays(backOnDay, -1),
  };
}
