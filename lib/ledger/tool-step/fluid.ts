import { daysBetween } from '../../calendar/day';
import { dayLabel } from '../../calendar/day-text';
import { DROPS_PER_ML_RANGE, dropsPerMl } from '../../fluid/drops-per-ml';
import { ok, type Refusal, type Result, refuse } from '../../result';
import type { ToolRecord } from '../tool-record';
import { placed, standing } from './place';
import type { ToolStep } from './step';

/** An extension is looked at again within a year. Common practice, no source. */
const EXTENSION_DAYS_MAX = 366;

/** A bottle opened: its opened life begins, once. */
export const fluidOpened: ToolStep<'fluid-opened'> = (tool, payload) => {
  const kept = checkKept(tool);
  if (!kept.ok) return kept;
  if (tool.openedOnDay !== null)
    return refuse('opened', `${tool.id} was already opened on ${dayLabel(tool.openedOnDay)}.`);
  return ok({ ...tool, openedOnDay: payload.onDay });
};

/** How much is left in a bottle. */
export const fluidLevelRead: ToolStep<'fluid-level-read'> = (tool, payload) => {
  const kept = checkKept(tool);
  return kept.ok ? ok({ ...tool, levelMl: payload.levelMl }) : kept;
};

/** Drops counted into a measure: this bottle's drops to the millilitre. A slip of the count is refused. */
export const fluidDropsCounted: ToolStep<'fluid-drops-counted'> = (tool, { drops, volumeMl }) => {
  const kept = checkKept(tool);
  if (!kept.ok) return kept;
  const counted = dropsPerMl({ drops, volumeMl });
  const { low, high } = DROPS_PER_ML_RANGE;
  if (counted < low || counted > high)
    return refuse(
      'drops',
      `${drops} drops in ${volumeMl} mL is not a dropper: droppers give ${low} to ${high} drops to the millilitre. Count again.`,
      'drops',
    );
  return ok({ ...tool, dropsPerMl: counted });
};

/** A longer life after an inspection, for a bottle that has a day to go past. */
export const fluidExtended: ToolStep<'fluid-extended'> = (tool, { onDay, untilDay }) => {
  const kept = checkKept(tool);
  if (!kept.ok) return kept;
  if (tool.expiresOnDay === null && tool.openedOnDay === null)
    return refuse('extension', `${tool.id} has no day on record that could be extended.`, 'untilDay');
  if (untilDay <= onDay)
    return refuse('extension', 'The new day must lie after the day of the inspection.', 'untilDay');
  if (daysBetween(onDay, untilDay) > EXTENSION_DAYS_MAX)
    return refuse('extension', 'Extend by a year at most; then look at it again.', 'untilDay');
  return ok({ ...tool, extendedUntilDay: untilDay });
};

/** The end of a bottle. One already scrapped may still get its transfer note, once. */
export const fluidDisposed: ToolStep<'fluid-disposed'> = (
  tool,
  { onDay, how, transferNote, volumeMl },
  entry,
) => {
  if (tool.role !== 'fluid') return refuse('role', `${tool.id} is not a fluid.`, 'toolId');
  if (tool.state === 'lost') return refuse('state', `${tool.id} is lost; nothing can be disposed of.`);
  if (tool.disposal !== null)
    return refuse('disposed', `${tool.id} was already disposed of on ${tool.disposal.onDay}.`);
  if (how === 'waste-carrier' && transferNote === '')
    return refuse('note', 'Write down the number of the waste transfer note.', 'transferNote');
  const disposal = { onDay, how, transferNote, volumeMl };
  const gone = tool.state === 'scrapped' ? tool : placed(tool, 'scrapped', entry);
  return ok({ ...gone, levelMl: 0, disposal });
};

function checkKept(tool: ToolRecord): Result<null, Refusal> {
  if (tool.role !== 'fluid') return refuse('role', `${tool.id} is not a fluid.`, 'toolId');
  if (tool.state === 'scrapped' || tool.state === 'lost')
    return refuse('state', `${tool.id} is ${standing(tool)}; nothing can be read or opened.`);
  return ok(null);
}
