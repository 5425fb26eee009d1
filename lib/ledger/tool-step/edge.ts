import { ok, refuse } from '../../result';
import { evidenceOfCause } from '../../shop/end-evidence';
import type { Role } from '../../shop/vocabulary';
import { addUse, cutToUse, holdsExactly } from '../edge-use';
import { currentEdge, type EdgeRecord, newEdge } from '../tool-record';
import { placed, standing, withEdge } from './place';
import type { ToolStep } from './step';

/**
 * A row of the cut log: its use is added to the edge in service. Rows are often written up late, so a tool that has
 * meanwhile come back dull or gone out for regrind still takes them.
 */
export const cutLogged: ToolStep<'cut-logged'> = (tool, cut) => {
  const edge = currentEdge(tool);
  if (edge === undefined || !cuts(tool.role, cut.operation)) {
    return refuse(
      'role',
      `${tool.id} is not a tool that cuts ${cut.operation === 'cone' ? 'cones' : 'threads'}.`,
    );
  }
  if (edge.end !== null)
    return refuse('edge', `${tool.id} has no edge left in service; nothing more can be cut with it.`);
  if (tool.state === 'scrapped' || tool.state === 'lost') {
    return refuse(
      'state',
      `${tool.id} is ${standing(tool)}; take that entry back first if it was a mistake.`,
    );
  }
  const added = addUse(edge, cutToUse(cut));
  if (!holdsExactly(added))
    return refuse('exposure', `This row is more than ${tool.id} can have cut; check the ends and the size.`);
  return ok(withEdge(tool, added));
};

/** The edge in service taken out of it, with its cause. The tool goes where the entry says. */
export const edgeEnded: ToolStep<'edge-ended'> = (tool, { cause, to, pieces }, entry) => {
  const edge = currentEdge(tool);
  if (edge === undefined) return refuse('role', `${tool.id} has no cutting edge.`);
  if (edge.end !== null) return refuse('edge', `The edge of ${tool.id} was already taken out of service.`);
  if (tool.state === 'lost') return refuse('state', `${tool.id} is lost; say that it was found first.`);
  if (tool.state === 'scrapped' && to !== 'scrapped')
    return refuse('state', `${tool.id} is scrapped; reverse that entry if it was a mistake.`);
  if (to === 'regrind' && tool.role !== 'blade') return refuse('role', 'Only blades are reground.', 'to');
  const ended: EdgeRecord = { ...edge, end: evidenceOfCause(cause), cause, endedAtMs: entry.serverAtMs };
  const owed = pieces === 'owed' ? ({ pieces } as const) : {};
  return ok({ ...withEdge(placed(tool, to, entry), ended), ...owed });
};

/** A blade back from regrind: a new edge from zero. An edge sent out while still good ends as taken out good. */
export const edgeRenewed: ToolStep<'edge-renewed'> = (tool, { firstOff }, entry) => {
  const edge = currentEdge(tool);
  if (tool.role !== 'blade' || edge === undefined)
    return refuse('role', `${tool.id} is not a blade; only blades are reground.`);
  if (tool.state !== 'regrind')
    return refuse('state', `${tool.id} is ${standing(tool)}; send it out for regrind first.`);
  const closed: EdgeRecord =
    edge.end === null
      ? { ...edge, end: 'removed-working', cause: 'retired-good', endedAtMs: entry.serverAtMs }
      : edge;
  const edges = [...tool.edges.slice(0, -1), closed, newEdge(edge.edgeNo + 1)];
  return ok({ ...placed(tool, 'in-crib', entry), edges, firstOffOwed: firstOff === 'owed' });
};

function cuts(role: Role, operation: 'cone' | 'thread'): boolean {
  return role === (operation === 'cone' ? 'blade' : 'die');
}
