import type { Day } from '../calendar';
import { dayLabel } from '../calendar/day-text';
import { ok, type Refusal, type Result, refuse } from '../result';
import type { GaugeResult } from '../shop/acceptance';
import { connectionText } from '../shop/connection-text';
import type { Connection } from '../shop/noun';
import {
  CALIBRATED_ROLES,
  HAND_LABEL,
  type Hand,
  ROLE_LABEL,
  type Role,
  TOOL_STATE_LABEL,
  type ToolState,
} from '../shop/vocabulary';

/** A gauge as far as it matters whether ends may be accepted with it. */
export interface GaugeFacts {
  readonly id: string;
  readonly role: Role;
  readonly hand: Hand | null;
  readonly state: ToolState;
  readonly stateSinceMs: number;
  /** The last day of validity; null: never calibrated, or failed. */
  readonly dueOnDay: Day | null;
  readonly fitsConnectionIds: readonly string[];
  /** Ends accepted with it since its calibration have used its interval up. Absent: not counted by ends. */
  readonly usedUp?: boolean;
}

/** When and on what it was used. */
export interface GaugeUse {
  readonly connection: Connection;
  readonly gaugedOnDay: Day;
  readonly gaugedAtMs: number;
}

/** Kinds of gauge that serve every size. */
const ANY_SIZE: readonly Role[] = ['micrometer', 'torque-wrench', 'thread-wires'];

/**
 * Whether ends may be accepted with a gauge: of the shop, of the kind it was used as, for this size and service, of the
 * thread's hand, not set aside, and in date. A gauge is good to the end of its due day. One set aside after the moment of
 * gauging counts as it stood then: what was accepted stays in the record, and its recall lists it.
 * Source: end-of-day rule and hold states are common practice, no source.
 */
export function checkGauge(
  used: GaugeResult,
  gauge: GaugeFacts | undefined,
  use: GaugeUse,
): Result<null, Refusal> {
  if (gauge === undefined)
    return refuse('unknown-gauge', `No gauge ${used.toolId} is in the record. Check the mark.`, 'gauges');
  if (gauge.role !== used.role)
    return refuse(
      'gauge-role',
      `${gauge.id} is a ${ROLE_LABEL[gauge.role]}, not a ${ROLE_LABEL[used.role]}.`,
      'gauges',
    );
  const suited = checkSuited(gauge, use.connection);
  return suited.ok ? checkStanding(gauge, use) : suited;
}

function checkSuited(gauge: GaugeFacts, connection: Connection): Result<null, Refusal> {
  if (!ANY_SIZE.includes(gauge.role) && !gauge.fitsConnectionIds.includes(connection.id))
    return refuse(
      'gauge-size',
      `${gauge.id} is not for ${connectionText(connection)}. Take the ${ROLE_LABEL[gauge.role]} of that size and service.`,
      'gauges',
    );
  if (gauge.hand !== null && gauge.hand !== connection.hand)
    return refuse(
      'gauge-hand',
      `HAND MISMATCH: ${gauge.id} is ${HAND_LABEL[gauge.hand]}, the thread is ${HAND_LABEL[connection.hand]}.`,
      'gauges',
    );
  return ok(null);
}

function checkStanding(gauge: GaugeFacts, use: GaugeUse): Result<null, Refusal> {
  const usable = gauge.state === 'in-crib' || gauge.state === 'issued' || gauge.stateSinceMs > use.gaugedAtMs;
  if (!usable)
    return refuse(
      'gauge-state',
      `${gauge.id} is ${TOOL_STATE_LABEL[gauge.state]}. Do not accept with it; take another ${ROLE_LABEL[gauge.role]}.`,
      'gauges',
    );
  if (!CALIBRATED_ROLES.includes(gauge.role)) return ok(null);
  // Set aside since: what it was good to is no longer on its record; its recall will say which ends to look at.
  if (gauge.dueOnDay === null && gauge.stateSinceMs > use.gaugedAtMs) return ok(null);
  if (gauge.dueOnDay === null)
    return refuse(
      'gauge-date',
      `${gauge.id} has no calibration in date. Take another ${ROLE_LABEL[gauge.role]}.`,
      'gauges',
    );
  if (gauge.dueOnDay < use.gaugedOnDay)
    return refuse(
      'gauge-date',
      `${gauge.id} was good to the end of ${dayLabel(gauge.dueOnDay)}. Do not accept with it; take another ${ROLE_LABEL[gauge.role]}, or have it calibrated.`,
      'gauges',
    );
  if (gauge.usedUp === true)
    return refuse(
      'gauge-ends',
      `${gauge.id} has gauged as many ends as one calibration is good for. Take another ${ROLE_LABEL[gauge.role]}, or have it calibrated.`,
      'gauges',
    );
  return ok(null);
}
