import type { Day } from '../calendar/day';
import type { Part } from '../shop/part';
import { ROLE_LABEL, type Role } from '../shop/vocabulary';
import { capital } from '../text/capital';
import { type ConditionNeed, dueBeforeDone, judgeCondition } from './judge-condition';
import { judgeCustody, type KitTool } from './judge-custody';
import { type FitNeed, judgeFit } from './judge-fit';
import type { KitScan, Stop } from './kit-stop';

/** What a scanned thing is judged against: the line, its size and work, and who is already in the kit. */
export interface KitNeed extends FitNeed, ConditionNeed {
  readonly line: { readonly id: string; readonly dueOnDay: Day };
  readonly roles: readonly Role[];
  readonly scannedIds: readonly string[];
}

/**
 * Whether a scanned thing goes into the kit of a line: hand, size and pressure class, where it stands, then its edge,
 * calibration or fluid, in the order in which a mistake costs most. For the counter and, once more, for the command that
 * issues the kit.
 */
export function judgeItem(tool: KitTool, part: Part, need: KitNeed): KitScan {
  const stop =
    judgeTwice(tool, need) ??
    judgeFit(tool, part, need) ??
    judgeNeeded(tool, need) ??
    judgeCustody(tool, need.line.id, need.today) ??
    judgeCondition(tool, part, need);
  if (stop === null)
    return {
      ...{ goes: true, toolId: tool.id, role: tool.role },
      mind: dueBeforeDone(tool, need.line.dueOnDay),
    };
  const [code, sentence] = stop;
  return { goes: false, toolId: tool.id, code, sentence };
}

function judgeTwice({ id }: KitTool, { scannedIds }: KitNeed): Stop | null {
  return scannedIds.includes(id) ? ['scanned-twice', `${id} is already in this kit.`] : null;
}

function judgeNeeded({ id, role }: KitTool, { roles }: KitNeed): Stop | null {
  if (roles.includes(role)) return null;
  return ['not-needed', `${capital(ROLE_LABEL[role])} ${id}: this job does not ask for one.`];
}
