import { ok, refuse } from '../../result';
import { standing } from './place';
import type { ToolStep } from './step';

/** Marked again with the ID it has: nothing of where it stands or what it has cut changes. What is gone cannot be marked. */
export const toolMarked: ToolStep<'tool-marked'> = (tool) => {
  if (tool.state === 'scrapped' || tool.state === 'lost')
    return refuse('state', `${tool.id} is ${standing(tool)}; it cannot be marked.`);
  return ok(tool);
};
