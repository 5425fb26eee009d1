import { expect, it } from 'vitest';
import { proposeGauge, type ToolAtHand } from '@/lib/acceptance/propose-gauges';

const parts = new Map([
  ['go-56', { fitsConnectionIds: ['9-16-high'] }],
  ['go-25', { fitsConnectionIds: ['1-4-medium'] }],
]);
const wanted = {
  role: 'go-ring',
  connectionId: '9-16-high',
  hand: 'LH',
  lineId: 'J-1.1',
  today: '2026-03-02',
} as const;
const ring = (id: string, over: Partial<ToolAtHand> = {}): ToolAtHand => ({
  ...{
    id,
    partId: 'go-56',
    role: 'go-ring',
    hand: 'LH',
    state: 'in-crib',
    jobLineId: null,
    dueOnDay: '2026-12-31',
  },
  ...over,
});

// source: hand. Which ring a person would take without asking.
it('fills in the one issued for the line, else the only one; where several could be meant, none', () => {
  expect(proposeGauge([ring('A')], parts, wanted).toolId).toBe('A');
  expect(proposeGauge([ring('A'), ring('B')], parts, wanted)).toMatchObject({
    toolId: null,
    candidateIds: ['A', 'B'],
  });
  const issued = ring('B', { state: 'issued', jobLineId: 'J-1.1' });
  expect(proposeGauge([ring('A'), issued], parts, wanted)).toMatchObject({
    toolId: 'B',
    candidateIds: ['B', 'A'],
  });
});

it('never one that may not be used', () => {
  const none = [
    ring('A', { dueOnDay: '2026-03-01' }),
    ring('B', { state: 'quarantined' }),
    ring('C', { hand: 'RH' }),
    ring('D', { partId: 'go-25' }),
    ring('E', { role: 'not-go-ring' }),
    ring('F', { dueOnDay: null }),
  ];
  expect(proposeGauge(none, parts, wanted)).toEqual({
    role: 'go-ring',
    toolId: null,
    dueOnDay: null,
    candidateIds: [],
  });
});
