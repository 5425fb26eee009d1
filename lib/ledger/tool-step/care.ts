import { dayLabel } from '../../calendar/day-text';
import { ok, refuse } from '../../result';
import { entryDay } from '../entry-day';
import type { ToolRecord } from '../tool-record';
import { edgeEnded, placed, standing } from './place';
import type { ToolStep } from './step';

/** Kept for a line until a day: nobody issues it to another line meanwhile. A keeping whose last day is past is over. */
export const reserved: ToolStep<'tool-reserved'> = (tool, payload, entry) => {
  const { jobLineId, untilDay } = payload;
  const gone = whyGone(tool);
  if (gone !== null) return refuse('state', gone);
  if (tool.state === 'quarantined')
    return refuse('state', `${tool.id} is ${standing(tool)}; it cannot be kept for a job.`);
  if (tool.reservation !== null && tool.reservation.untilDay >= entryDay(payload, entry))
    return refuse(
      'reserved',
      `${tool.id} is already kept for ${tool.reservation.jobLineId} until ${dayLabel(tool.reservation.untilDay)}.`,
    );
  return ok({ ...tool, reservation: { jobLineId, untilDay } });
};

/** The keeping for a line is over. */
export const freed: ToolStep<'tool-freed'> = (tool) =>
  tool.reservation === null
    ? refuse('reserved', `${tool.id} is not kept for any line.`)
    : ok({ ...tool, reservation: null });

/** After a breakage: all pieces found and where, or not. Asked once for each breakage. */
export const piecesAccounted: ToolStep<'pieces-accounted'> = (tool, { allFound }) => {
  if (tool.pieces !== 'owed' && tool.pieces !== 'not-found')
    return refuse('pieces', `Nothing of ${tool.id} is being searched for.`);
  return ok({ ...tool, pieces: allFound ? 'found' : 'not-found' });
};

/** A split die opened or closed a touch: its life goes on, and its next end is gauged as a first-off. */
export const dieAdjusted: ToolStep<'die-adjusted'> = (tool) => {
  if (tool.role !== 'die') return refuse('role', `${tool.id} is not a die; only dies are adjusted.`);
  const gone = whyGone(tool);
  if (gone !== null) return refuse('state', gone);
  if (edgeEnded(tool)) return refuse('edge', `${tool.id} has no edge left in service.`);
  return ok({ ...tool, adjustments: tool.adjustments + 1, firstOffOwed: true });
};

/** The first end after a regrind or an adjustment, gauged: passed, or the tool is set aside. Not gauged, it stays owed. */
export const firstOffChecked: ToolStep<'first-off-checked'> = (tool, { result }, entry) => {
  if (!tool.firstOffOwed) return refuse('first-off', `${tool.id} owes no first-off check.`);
  const gone = whyGone(tool);
  if (gone !== null) return refuse('state', gone);
  if (result === 'not-gauged') return ok(tool);
  return ok(result === 'pass' ? { ...tool, firstOffOwed: false } : placed(tool, 'quarantined', entry));
};

function whyGone(tool: ToolRecord): string | null {
  return tool.state === 'scrapped' || tool.state === 'lost' ? `${tool.id} is ${standing(tool)}.` : null;
}
