import { expect, it } from 'vitest';
import { currentEdge, newEdge } from '@/lib/ledger/tool-record';
import { entry, move, toolAfter } from '../../support/entry';

it('the edge in service is the last one; a body has none', () => {
  const reground = toolAfter('blade', move('regrind'), entry('edge-renewed', 'T-1', { onDay: '2026-03-09' }));
  expect(currentEdge(reground)?.edgeNo).toBe(2);
  expect(currentEdge(toolAfter('coning-body'))).toBeUndefined();
});

it('a new edge has cut nothing and is in service', () => {
  expect(newEdge(3)).toEqual({
    edgeNo: 3,
    end: null,
    cause: null,
    endedAtMs: null,
    use: [],
    lastUse: null,
    readings: [],
  });
});
