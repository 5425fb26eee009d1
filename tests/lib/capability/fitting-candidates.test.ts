import { expect, it } from 'vitest';
import { listCandidates } from '@/lib/capability/candidates';
import { indexCandidates } from '@/lib/capability/fitting-candidates';
import { setItem, TODAY } from '../../support/plan-shop';

// source: hand.
it('indexCandidates finds by role and size, with what fits all, each once', () => {
  const items = [
    setItem('coning-body', { toolId: 'A', fitsConnectionIds: ['S', 'T', 'S'] }),
    setItem('coning-body', { toolId: 'B', fitsConnectionIds: ['T'] }),
    setItem('coning-body', { toolId: 'C', fitsConnectionIds: 'all' }),
    setItem('die', { toolId: 'D' }),
  ];
  const find = indexCandidates(listCandidates(items, [], { today: TODAY, lineDueOnDay: new Map() }));
  const found = (connectionId: string) => find('coning-body', connectionId).map(({ id }) => id);
  expect(found('S')).toEqual(['A', 'C']);
  expect(found('T')).toEqual(['A', 'B', 'C']);
  expect(found('S')).toEqual(['A', 'C']);
  expect(found('X')).toEqual(['C']);
  expect(find('blade', 'S')).toEqual([]);
});
