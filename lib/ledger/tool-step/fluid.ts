import { ok, type Refusal, type Result, refuse } from '../../result';
import type { ToolRecord } from '../tool-record';
import { standing } from './place';
import type { ToolStep } from './step';

/** A bottle opened: its opened life begins, once. */
export const fluidOpened: ToolStep<'fluid-opened'> = (tool, payload) => {
  const kept = checkKept(tool);
  if (!kept.ok) return kept;
  if (tool.openedOnDay !== null)
    return refuse('opened', `${tool.id} was already opened on ${tool.openedOnDay}.`);
  return ok({ ...tool, openedOnDay: payload.onDay });
};

/** How much is left in a bottle. */
export const fluidLevelRead: ToolStep<'fluid-level-read'> = (tool, payload) => {
  const kept = checkKept(tool);
  return kept.ok ? ok({ ...tool, levelMl: payload.levelMl }) : kept;
};

function checkKept(tool: ToolRecord): Result<null, Refusal> {
  if (tool.role !== 'fluid') return refuse('role', `${tool.id} is not a fluid.`, 'toolId');
  if (tool.state === 'scrapped' || tool.state === 'lost')
    return refuse('state', `${tool.id} is ${standing(tool)}; nothing can be read or opened.`);
  return ok(null);
}
