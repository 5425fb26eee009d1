import type { Day } from '../calendar/day';
import { dayLabel } from '../calendar/day-text';
import { bottleOfTool } from '../fluid/bottle-of-tool';
import { judgeBottle } from '../fluid/judge-bottle';
import type { FluidWork } from '../fluid/permit-fluid';
import type { Bottle, BottleBar } from '../fluid/pick-first';
import type { Part } from '../shop/part';
import { CALIBRATED_ROLES } from '../shop/vocabulary';
import type { KitTool } from './judge-custody';
import type { Stop, StopCode } from './kit-stop';

/** What a tool is to do, and on which day. */
export interface ConditionNeed {
  readonly today: Day;
  readonly fluidWork: FluidWork;
  /** The shop's bottles, to name the one to take instead. */
  readonly bottles: readonly Bottle[];
}

/**
 * Why a tool must not be used today for the work, wherever it stands: no edge in service, out of calibration, or a fluid
 * that may not be used on it. Null where nothing is in the way.
 */
export function judgeCondition(tool: KitTool, part: Part, need: ConditionNeed): Stop | null {
  if (tool.edgeEnded) return ['edge-ended', `${tool.id} has no edge left in service.`];
  if (tool.role === 'fluid') return judgeFluid(tool, part, need);
  return judgeCalibration(tool, need.today);
}

/** A gauge that runs out before the job does may be used, and says so; null where it lasts. */
export function dueBeforeDone(
  tool: Pick<KitTool, 'id' | 'role' | 'dueOnDay'>,
  doneOnDay: Day,
): string | null {
  if (!CALIBRATED_ROLES.includes(tool.role) || tool.dueOnDay === null || tool.dueOnDay >= doneOnDay)
    return null;
  return `${tool.id} is due at the end of ${dayLabel(tool.dueOnDay)}, before the job is done on ${dayLabel(doneOnDay)}: nothing can be accepted with it after that.`;
}

function judgeCalibration(tool: KitTool, today: Day): Stop | null {
  if (!CALIBRATED_ROLES.includes(tool.role)) return null;
  if (tool.dueOnDay === null)
    return ['calibration', `${tool.id} has no calibration on record. Do not accept with this gauge.`];
  const late = tool.dueOnDay < today;
  if (!late && !tool.endsUsedUp) return null;
  const why = late
    ? `was due on ${dayLabel(tool.dueOnDay)}`
    : 'has gauged as many ends as one calibration is good for';
  return ['calibration', `${tool.id} ${why}. Do not accept with this gauge; send it out and take another.`];
}

const FLUID_STOP: Record<BottleBar['why'], StopCode> = {
  'over-life': 'fluid-date',
  empty: 'fluid-empty',
  'set-aside': 'quarantined',
  material: 'fluid-not-permitted',
  duty: 'fluid-not-permitted',
  'titanium-chlorinated': 'fluid-not-permitted',
  'titanium-unknown': 'fluid-not-permitted',
};

function judgeFluid(tool: KitTool, part: Part, { today, fluidWork, bottles }: ConditionNeed): Stop | null {
  const refusal = judgeBottle(bottleOfTool(tool, part), bottles, fluidWork, today);
  return refusal === null ? null : [FLUID_STOP[refusal.why], refusal.sentence];
}
