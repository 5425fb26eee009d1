import { expect, it } from 'vitest';
import { countEdges, countEdgesByPart } from '@/lib/life/edge-counts';
import { edge } from '@/tests/support/edge-histories';

// source: hand.
it('counts edges by how they ended, and by part', () => {
  const histories = [
    edge('a', { end: 'worn' }),
    edge('b'),
    edge('c', { end: 'incident', partId: 'p' }),
    edge('d', { end: 'removed-working' }),
  ];
  expect(countEdges(histories)).toEqual({ worn: 1, incident: 1, removedWorking: 1, inService: 1 });
  expect(countEdgesByPart(histories).p).toEqual({ worn: 0, incident: 1, removedWorking: 0, inService: 0 });
  expect(countEdges([])).toEqual({ worn: 0, incident: 0, removedWorking: 0, inService: 0 });
});
