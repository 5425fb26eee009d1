import type { Day } from '../calendar/day';
import { fluidExpiresOnDay } from '../outlook/plan-facts';
import { connectionText } from '../shop/connection-text';
import type { Connection } from '../shop/noun';
import type { Part } from '../shop/part';
import { CALIBRATED_ROLES, HAND_LABEL, type Hand, ROLE_LABEL, type Role } from '../shop/vocabulary';
import { judgeCustody, type KitTool } from './judge-custody';
import type { KitScan, StopCode } from './kit-stop';

/** What a scanned thing is judged against: the line, its size, and who is already in the kit. */
export interface KitNeed {
  readonly today: Day;
  readonly line: {
    readonly id: string;
    readonly materialId: string;
    readonly dueOnDay: Day;
  };
  readonly connection: Connection;
  readonly materialName: string;
  readonly roles: readonly Role[];
  readonly scannedIds: readonly string[];
  /** The shop's other sizes, to tell a wrong pressure class from a wrong size. */
  readonly connections: readonly Connection[];
}

/** Roles that carry a hand: what is of the other hand never goes out for this size. */
const HANDED: readonly Role[] = ['die', 'go-ring', 'not-go-ring', 'setting-plug'];

/**
 * Whether a scanned thing goes into the kit of a line: hand, size, pressure class, where it stands, calibration and
 * fluid are asked in the order in which a mistake costs most. For the counter and, once more, for the command that
 * issues the kit.
 */
export function judgeItem(tool: KitTool, part: Part, need: KitNeed): KitScan {
  const stop = (code: StopCode, sentence: string): KitScan => ({
    goes: false,
    toolId: tool.id,
    code,
    sentence,
  });
  if (need.scannedIds.includes(tool.id)) return stop('scanned-twice', `${tool.id} is already in this kit.`);
  const misfit = judgeFit(tool, part, need);
  if (misfit !== null) return stop(...misfit);
  if (!need.roles.includes(tool.role))
    return stop('not-needed', `${capital(ROLE_LABEL[tool.role])} ${tool.id}: this job does not ask for one.`);
  const custody = judgeCustody(tool, need.line.id, need.today);
  if (custody !== null) return stop(...custody);
  const dates = tool.role === 'fluid' ? judgeFluid(tool, part, need) : judgeCalibration(tool, need);
  if (dates !== null) return stop(...dates);
  return { goes: true, toolId: tool.id, role: tool.role, mind: minding(tool, need) };
}

type Stop = readonly [StopCode, string];

function judgeFit(tool: KitTool, part: Part, { connection, connections }: KitNeed): Stop | null {
  const wanted = connectionText(connection);
  if (HANDED.includes(tool.role) && tool.hand !== connection.hand)
    return ['hand', `${tool.id} is ${handText(tool.hand)}; ${wanted} is ${HAND_LABEL[connection.hand]}.`];
  if (part.fitsConnectionIds.length === 0 || part.fitsConnectionIds.includes(connection.id)) return null;
  const sameTube = connections.some(
    ({ id, odNum, odDen }) =>
      part.fitsConnectionIds.includes(id) && odNum * connection.odDen === connection.odNum * odDen,
  );
  return sameTube
    ? ['pressure', `${tool.id} serves this tube in the other pressure class; the job is ${wanted}.`]
    : ['size', `${tool.id} does not serve ${wanted}.`];
}

function judgeCalibration(tool: KitTool, { today }: KitNeed): Stop | null {
  if (!CALIBRATED_ROLES.includes(tool.role)) return null;
  if (tool.dueOnDay === null)
    return ['calibration', `${tool.id} has no calibration on record. Do not accept with this gauge.`];
  if (tool.dueOnDay >= today) return null;
  return [
    'calibration',
    `${tool.id} was due on ${tool.dueOnDay}. Do not accept with this gauge; send it out and take another.`,
  ];
}

function judgeFluid(tool: KitTool, part: Part, { today, line, materialName }: KitNeed): Stop | null {
  if (part.permittedMaterialIds !== 'all' && !part.permittedMaterialIds.includes(line.materialId))
    return ['fluid-material', `${part.name} is not permitted on ${materialName}. Take another fluid.`];
  const expiresOnDay = fluidExpiresOnDay(tool, part);
  if (expiresOnDay !== null && expiresOnDay < today)
    return ['fluid-date', `${tool.id} was good to ${expiresOnDay}. Take a bottle in date.`];
  if (tool.levelMl !== null && tool.levelMl <= 0) return ['fluid-empty', `${tool.id} is empty.`];
  return null;
}

/** A gauge that runs out before the job does goes out, and says so. */
function minding(tool: KitTool, { line }: KitNeed): string | null {
  if (!CALIBRATED_ROLES.includes(tool.role) || tool.dueOnDay === null || tool.dueOnDay >= line.dueOnDay)
    return null;
  return `${tool.id} is due at the end of ${tool.dueOnDay}, before the job is done on ${line.dueOnDay}: nothing can be accepted with it after that.`;
}

function handText(hand: Hand | null): string {
  return hand === null ? 'of no marked hand' : HAND_LABEL[hand];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
