import type { Shown } from '../shop/shown';
import { isEdgeKind } from './edge-histories';
import type { Outlook } from './outlook';
import { endsLeftFor } from './plan-facts';

/**
 * The prediction that a screen shows of a tool for a line of the plan: that it finishes what is left of the line to
 * cone (a blade) or to thread (a die). Undefined where none is shown: no edge, no such open line, nothing left of it, or the tool does not cut it.
 */
export function shownFor(
  outlook: Pick<Outlook, 'facts' | 'forecast'>,
  { toolId, jobLineId }: { toolId: string; jobLineId: string },
): Shown | undefined {
  const { facts } = outlook;
  const line = facts.lines.find(({ id }) => id === jobLineId);
  const tool = facts.tools.find(({ id }) => id === toolId);
  if (line === undefined || tool === undefined || !isEdgeKind(tool.role)) return undefined;
  const fits = facts.parts
    .find(({ id }) => id === tool.partId)
    ?.fitsConnectionIds.includes(line.connectionId);
  const ends = endsLeftFor(line, tool.role === 'blade' ? 'cone' : 'thread');
  const { connectionId, materialId } = line;
  const forecast = fits && ends > 0 ? outlook.forecast(toolId, { connectionId, materialId }) : undefined;
  if (forecast === undefined) return undefined;
  const { lowEnds, highEnds } = forecast;
  return {
    connectionId,
    materialId,
    ends,
    probability: forecast.probabilityFinishes(ends),
    lowEnds,
    highEnds,
  };
}
