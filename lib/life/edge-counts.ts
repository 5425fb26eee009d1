import type { EdgeCounts } from './life-fit';
import type { EdgeHistory } from './observation';

/** How many edges ended in which way: "17 worn out, 6 still cutting". Source: hand (a count). */
export function countEdges(histories: readonly EdgeHistory[]): EdgeCounts {
  const count = (end: EdgeHistory['end']): number =>
    histories.filter((history) => history.end === end).length;
  return {
    worn: count('worn'),
    incident: count('incident'),
    removedWorking: count('removed-working'),
    inService: count('in-service'),
  };
}

/** The same, part by part. */
export function countEdgesByPart(histories: readonly EdgeHistory[]): Record<string, EdgeCounts> {
  const byPart = new Map<string, EdgeHistory[]>();
  for (const history of histories) {
    const group = byPart.get(history.partId);
    if (group === undefined) byPart.set(history.partId, [history]);
    else group.push(history);
  }
  return Object.fromEntries([...byPart].map(([partId, group]) => [partId, countEdges(group)]));
}
