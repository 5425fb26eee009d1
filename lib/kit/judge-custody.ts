import type { Day } from '../calendar/day';
import { dayLabel } from '../calendar/day-text';
import type { ToolRecord } from '../ledger/tool-record';
import type { Chlorinated } from '../shop/fluid-lot';
import type { Stop } from './kit-stop';

/** A tool as far as a kit cares. */
export type KitTool = Pick<
  ToolRecord,
  | 'id'
  | 'partId'
  | 'role'
  | 'hand'
  | 'state'
  | 'stateReason'
  | 'holderId'
  | 'jobLineId'
  | 'dueOnDay'
  | 'expiresOnDay'
  | 'openedOnDay'
  | 'levelMl'
  | 'extendedUntilDay'
  | 'reservation'
  | 'firstOffOwed'
  | 'adjustments'
> & {
  /** Who holds it, by name, where somebody does. */
  readonly holderName: string | null;
  /** True for a blade or die whose last edge was taken out of service. */
  readonly edgeEnded: boolean;
  /** Gauge: the ends that one calibration is good for are used up. */
  readonly endsUsedUp: boolean;
  /** Fluid: what the supplier answered for its lot; null where nobody has written anything down of it. */
  readonly lotChlorinated: Chlorinated | null;
};

/**
 * Why a tool cannot leave the crib for a line today, whatever its size: out, away, quarantined, gone, a first-off owed,
 * kept for another line. Null where it can.
 */
export function judgeCustody(tool: KitTool, lineId: string, today: Day): Stop | null {
  switch (tool.state) {
    case 'issued':
      return [
        'out',
        `${tool.id} is with ${tool.holderName ?? 'somebody'}${tool.jobLineId === null ? '' : `, for ${tool.jobLineId}`}.`,
      ];
    case 'quarantined':
      return ['quarantined', `${tool.id} is set aside${why(tool.stateReason)}. It must not be used.`];
    case 'regrind':
    case 'calibration':
      return ['away', `${tool.id} is out for ${tool.state}; receive it back first.`];
    case 'scrapped':
    case 'lost':
      return [
        'gone',
        `${tool.id} is ${tool.state} in the record. If it is in your hand, set it aside and say so.`,
      ];
    case 'in-crib':
      return judgeInCrib(tool, lineId, today);
  }
}

function judgeInCrib(tool: KitTool, lineId: string, today: Day): Stop | null {
  if (tool.firstOffOwed)
    return ['first-off', `${tool.id} goes out when its first-off has passed the gauges.`];
  const { reservation } = tool;
  if (reservation === null || reservation.jobLineId === lineId || reservation.untilDay < today) return null;
  return ['kept', `${tool.id} is kept for ${reservation.jobLineId} until ${dayLabel(reservation.untilDay)}.`];
}

function why(reason: string): string {
  return reason === '' ? '' : ` (${reason})`;
}
