import { expect, it } from 'vitest';
import { benchLines } from '@/lib/bench/bench-snapshot';
import { finishChance } from '@/lib/bench/finish-chance';
import type { KitStock } from '@/lib/kit/propose-kit';
import { computeOutlook } from '@/lib/outlook/outlook';
import { part } from '../../support/db';
import { edgeFacts } from '../../support/edge-facts';
import { toolAfter } from '../../support/entry';
import { lineFacts, shopRecord, toolFacts } from '../../support/shop-record';

const SIZE = { connectionId: '3-8-medium', materialId: '316-cw' };
const tools = [toolFacts({ id: 'D-1', role: 'die' }), toolFacts({ id: 'B-1', role: 'blade' })];
const outlook = computeOutlook(
  shopRecord({ lines: [lineFacts({ goodThreads: 10 })], tools, edges: [edgeFacts('D-1'), edgeFacts('B-1')] }),
);

const out = (id: string, role: 'die' | 'blade' | 'go-ring', over: object = {}): KitStock => ({
  part: part({
    id: `${role}-part`,
    role,
    hand: role === 'blade' ? null : 'LH',
    fitsConnectionIds: [SIZE.connectionId],
  }),
  tool: {
    ...toolAfter(role),
    ...{ id, hand: role === 'blade' ? null : ('LH' as const), state: 'issued' as const, holderId: 'ash' },
    ...{
      holderName: 'Ash Moor',
      jobLineId: 'J-1.1',
      edgeEnded: false,
      endsUsedUp: false,
      lotChlorinated: null,
    },
    ...over,
  },
});

// source: identity. The bench counts the same futures as every other screen, to one point in 512.
it('answers as the tool page does', () => {
  const [line] = benchLines(outlook, [out('D-1', 'die'), out('B-1', 'blade')]);
  expect(line?.edges.map(({ toolId, operation, endsToCut }) => [toolId, operation, endsToCut])).toEqual([
    ['D-1', 'thread', 14],
    ['B-1', 'cone', 24],
  ]);
  for (const edge of line?.edges ?? []) {
    const forecast = outlook.forecast(edge.toolId, SIZE);
    for (const ends of [1, 14, 24, 60])
      expect(
        Math.abs((finishChance(edge.left, 0, ends) ?? -1) - (forecast?.probabilityFinishes(ends) ?? 0)),
      ).toBeLessThan(2 / 512);
  }
});

// source: hand. What is out for the line, and nothing else; a gauge out of date stops, a first-off owed is asked for.
it('carries what is out for the line, with what is in the way of it', () => {
  const today = outlook.facts.today;
  const [line] = benchLines(outlook, [
    out('D-1', 'die', { firstOffOwed: true }),
    out('G-1', 'go-ring', { dueOnDay: '1999-01-01' }),
    out('G-2', 'go-ring', { dueOnDay: today }),
    out('D-9', 'die', { jobLineId: 'J-9.1' }),
    out('D-8', 'die', { state: 'in-crib', jobLineId: null }),
  ]);
  expect(line?.edges.map(({ toolId, stop }) => [toolId, stop])).toEqual([
    ['D-1', 'Gauge its first-off before the next end: GO and NOT GO.'],
  ]);
  expect(line?.gauges.map(({ toolId, stop }) => [toolId, stop === null])).toEqual([
    ['G-1', false],
    ['G-2', true],
  ]);
});

it('a line far ahead without a kit is left at home', () => {
  const facts = shopRecord({
    lines: [lineFacts({ startOnDay: '2198-01-01', dueOnDay: '2198-01-02' })],
    tools,
    edges: [],
  });
  expect(benchLines(computeOutlook(facts), [])).toEqual([]);
});
