import { expect, it } from 'vitest';
import { isInScope, stockVariances } from '@/lib/kit/stock-variances';

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
