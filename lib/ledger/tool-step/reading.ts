import { READING_METHOD_LABEL, type ReadingMethod } from '../../reading/reading';
import { ok, refuse } from '../../result';
import type { EdgeKind } from '../../shop/vocabulary';
import { currentEdge } from '../tool-record';
import { standing, withEdge } from './place';
import type { ToolStep } from './step';

/** What can be read off which kind of edge: a land on a blade; thread and ring on what a die cut; a grade on both. */
const KINDS: Record<ReadingMethod, readonly EdgeKind[]> = {
  'flank-land': ['blade'],
  'pitch-diameter': ['die'],
  ring: ['die'],
  grade: ['blade', 'die'],
};

/** One inspection of the edge in service, kept with all that it had cut by then. */
export const edgeRead: ToolStep<'edge-read'> = (tool, { finding, onDay }, entry) => {
  const edge = currentEdge(tool);
  if (edge === undefined) return refuse('role', `${tool.id} has no cutting edge.`);
  if (edge.end !== null) return refuse('edge', `${tool.id} has no edge left in service to look at.`);
  if (tool.state === 'scrapped' || tool.state === 'lost')
    return refuse('state', `${tool.id} is ${standing(tool)}.`);
  if (!KINDS[finding.method].some((kind) => kind === tool.role))
    return refuse(
      'method',
      `${READING_METHOD_LABEL[finding.method]}: not read off a ${tool.role}.`,
      'method',
    );
  const reading = { entryId: entry.id, onDay, finding, use: edge.use };
  return ok(withEdge(tool, { ...edge, readings: [...edge.readings, reading] }));
};
