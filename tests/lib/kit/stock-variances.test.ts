import { expect, it } from 'vitest';
import { isInDrawer, isInScope, stockVariances } from '@/lib/kit/stock-variances';

const TOOLS = [
  { id: 'D-56-01', role: 'die', state: 'in-crib' },
  { id: 'D-56-02', role: 'die', state: 'in-crib' },
  { id: 'D-56-03', role: 'die', state: 'issued' },
  { id: 'G-56-GO-1', role: 'go-ring', state: 'in-crib' },
  { id: 'B-56-01', role: 'blade', state: 'lost' },
] as const;

// source: hand. Two sets and their differences, worked out on paper.
it('compares both ways, each tool once, look-alike characters folded', () => {
  expect(stockVariances(TOOLS, 'edges', ['d-56-o1', 'D-56-01', 'D-56-03', 'B-56-01', 'X-9'])).toEqual({
    scannedIds: ['D-56-01', 'D-56-03', 'B-56-01'],
    expectedIds: ['D-56-01', 'D-56-02'],
    foundIds: ['D-56-01'],
    missingIds: ['D-56-02'],
    unexpectedIds: ['D-56-03', 'B-56-01'],
    unknown: ['X-9'],
  });
});

it('what lies there by the record but outside the scope is no difference', () => {
  const result = stockVariances(TOOLS, 'edges', ['D-56-01', 'D-56-02', 'G-56-GO-1']);
  expect([result.missingIds, result.unexpectedIds]).toEqual([[], []]);
});

it('scopes hold the roles that they say', () => {
  expect(isInScope('fluid', 'everything')).toBe(true);
  expect(isInScope('fluid', 'fluids')).toBe(true);
  expect(isInScope('go-ring', 'gauges')).toBe(true);
  expect(isInScope('brush', 'edges')).toBe(false);
});

// source: hand. One drawer of three sizes and two kinds, told apart on paper.
const DRAWERS = [
  { id: 'D-56-01', role: 'die', state: 'in-crib', connectionIds: ['9-16-high'] },
  { id: 'D-38-01', role: 'die', state: 'in-crib', connectionIds: ['3-8-medium'] },
  { id: 'B-56-01', role: 'blade', state: 'in-crib', connectionIds: ['9-16-high', '9-16-medium'] },
  { id: 'B-56-02', role: 'blade', state: 'issued', connectionIds: ['9-16-high'] },
  { id: 'D-99-01', role: 'die', state: 'in-crib', connectionIds: [] },
] as const;

it('a drawer expects its own size and kind; the others are neither missing nor a difference', () => {
  const expected = (drawer: object) => stockVariances(DRAWERS, 'edges', [], drawer).missingIds;
  expect(expected({ connectionId: '9-16-high' })).toEqual(['D-56-01', 'B-56-01']);
  expect(expected({ connectionId: '9-16-medium' })).toEqual(['B-56-01']);
  expect(expected({ connectionId: '9-16-high', edgeKind: 'die' })).toEqual(['D-56-01']);
  expect(expected({ edgeKind: 'die' })).toEqual(['D-56-01', 'D-38-01', 'D-99-01']);
  const { missingIds, unexpectedIds } = stockVariances(DRAWERS, 'edges', ['D-56-01', 'D-38-01', 'B-56-02'], {
    connectionId: '9-16-high',
  });
  expect([missingIds, unexpectedIds]).toEqual([['B-56-01'], ['B-56-02']]);
});

// source: identity. Every edge of one named size lies in one drawer of each kind: the drawers add up to the whole.
it('the drawers of all kinds add up to the count of all edges', () => {
  const of = (drawer: object) => DRAWERS.filter((tool) => isInDrawer(tool, drawer)).length;
  expect(of({ edgeKind: 'die' }) + of({ edgeKind: 'blade' })).toBe(of({}));
  expect(of({})).toBe(DRAWERS.length);
});
