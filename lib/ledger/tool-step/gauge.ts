import { ok, refuse } from '../../result';
import { CALIBRATED_ROLES } from '../../shop/vocabulary';
import { placed, standing } from './place';
import type { ToolStep } from './step';

/** A calibration: passed until its next due day, or failed and so quarantined in the same entry. */
export const gaugeCalibrated: ToolStep<'gauge-calibrated'> = (tool, payload, entry) => {
  if (!CALIBRATED_ROLES.includes(tool.role))
    return refuse('role', `${tool.id} is not kept under calibration.`, 'toolId');
  if (tool.state === 'scrapped' || tool.state === 'lost')
    return refuse('state', `${tool.id} is ${standing(tool)}; it cannot have been calibrated.`);
  if (payload.result === 'fail') return ok({ ...placed(tool, 'quarantined', entry), dueOnDay: null });
  if (payload.dueOnDay === null)
    return refuse('due', 'A gauge that passed needs its next due day.', 'dueOnDay');
  if (payload.dueOnDay <= payload.onDay)
    return refuse('due', 'The next due day must lie after the day of calibration.', 'dueOnDay');
  const back = tool.state === 'calibration' ? placed(tool, 'in-crib', entry) : tool;
  return ok({ ...back, dueOnDay: payload.dueOnDay });
};
