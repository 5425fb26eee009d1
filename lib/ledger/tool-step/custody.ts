import { dayLabel } from '../../calendar/day-text';
import { ok, type Refusal, type Result, refuse } from '../../result';
import { CALIBRATED_ROLES, type ToolState } from '../../shop/vocabulary';
import { entryDay } from '../entry-day';
import type { ToolRecord } from '../tool-record';
import { edgeEnded, placed, standing } from './place';
import type { ToolStep } from './step';

/** Out of the crib to a person: one tool, one holder. */
export const issued: ToolStep<'tool-issued'> = (tool, payload, entry) => {
  if (tool.state !== 'in-crib')
    return refuse('state', `${tool.id} is ${standing(tool)}; only a tool in the crib can be issued.`);
  if (edgeEnded(tool)) return refuse('edge', `${tool.id} has no edge left in service.`);
  const kept = whyKept(tool, payload.jobLineId, entryDay(payload, entry));
  if (kept !== null) return kept;
  return ok({
    ...placed(tool, 'issued', entry),
    kitId: payload.kitId ?? null,
    holderId: payload.toPersonId,
    jobLineId: payload.jobLineId,
    bench: payload.bench,
  });
};

/** Why it stays in the crib although it lies there: a first-off owed, or kept for another line until a day. */
function whyKept(tool: ToolRecord, jobLineId: string | null, onDay: string): Result<never, Refusal> | null {
  if (tool.firstOffOwed)
    return refuse('first-off', `${tool.id} goes out again when its first-off has passed the gauges.`);
  const { reservation } = tool;
  if (reservation === null || reservation.jobLineId === jobLineId) return null;
  if (reservation.untilDay < onDay) return null;
  return refuse(
    'reserved',
    `${tool.id} is kept for ${reservation.jobLineId} until ${dayLabel(reservation.untilDay)}. Free it first if that no longer holds.`,
  );
}

/** Back from a person; in doubtful condition it waits in quarantine for a look. */
export const returned: ToolStep<'tool-returned'> = (tool, payload, entry) => {
  if (tool.state !== 'issued')
    return refuse('state', `${tool.id} is ${standing(tool)}; only an issued tool can come back.`);
  const back = placed(tool, payload.condition === 'ok' ? 'in-crib' : 'quarantined', entry);
  return ok(payload.pieces === 'owed' ? { ...back, pieces: 'owed' } : back);
};

/** Anywhere else: out for regrind or calibration, quarantined, lost, found, scrapped. */
export const moved: ToolStep<'tool-moved'> = (tool, { to, backOnDay }, entry) => {
  if (tool.state === 'scrapped')
    return refuse('state', `${tool.id} is scrapped; reverse that entry if it was a mistake.`);
  if (to === 'issued') return refuse('state', 'A tool goes out by issuing it to a person.');
  if (to === tool.state && backOnDay === tool.backOnDay)
    return refuse('state', `${tool.id} is already ${standing(tool)}.`);
  const destination = checkDestination(tool, to);
  if (!destination.ok) return destination;
  if (backOnDay !== null && !COMES_BACK.includes(to))
    return refuse('back', 'Only a tool that is away can have a day it is expected back.', 'backOnDay');
  return ok({ ...placed(tool, to, entry), backOnDay });
};

/** The states from which a tool is expected back on a day. */
const COMES_BACK: readonly ToolState[] = ['regrind', 'calibration', 'quarantined'];

function checkDestination(tool: ToolRecord, to: ToolState): Result<null, Refusal> {
  if (to === 'in-crib' && tool.state === 'issued')
    return refuse('state', `${tool.id} is issued; return it instead.`);
  if (to === 'in-crib' && edgeEnded(tool))
    return refuse('edge', `${tool.id} has no edge left in service; it cannot go back to the crib.`);
  if (to === 'regrind' && tool.role !== 'blade') return refuse('role', 'Only blades are reground.', 'to');
  if (to === 'calibration' && !CALIBRATED_ROLES.includes(tool.role))
    return refuse('role', `${tool.id} is not kept under calibration.`, 'to');
  return ok(null);
}
