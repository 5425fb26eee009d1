import { expect, it } from 'vitest';
import { endCosts } from '@/lib/end-costs/end-costs';
import type { LogEvent, RowCut } from '@/lib/score/log-event';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { DIE } from '../../support/db';

const began = (toolId: string): LogEvent => ({
  ...{
    type: 'began',
    toolId,
    edgeNo: 1,
    kind: 'die',
    partId: DIE.id,
    odIn: 0.5625,
    regrinds: 0,
    startKnown: true,
  },
});
const cut = (toolId: string, ends: number, change: Partial<RowCut> = {}): LogEvent => ({
  ...{
    type: 'cut',
    toolId,
    edgeNo: 1,
    atMs: 0,
    connectionId: 'S',
    materialId: 'M',
    dry: false,
    rework: false,
  },
  ...{ ends, goodEnds: ends, exposurePerEnd: 10 },
  ...change,
});
const ended = (toolId: string): LogEvent => ({ type: 'ended', toolId, edgeNo: 1, atMs: 1, how: 'worn' });
const part = { ...DIE, priceMinor: 12_000 };
const of = (events: readonly LogEvent[], parts = [part]) =>
  endCosts({
    events,
    parts,
    costs: DEFAULT_COSTS,
    fluidMinor: () => 25,
    wearFactor: (id) => (id === 'HARD' ? 3 : 1),
  });

// source: hand. 12 000 over 1 000 turns; 80 ends of size S at 10 turns and 20 of size T at 10: 9 600 and 2 400. Two of S spoilt
// at 3 000. S: (9 600 + 80·25 + 6 000)/78.
it('spreads a tool over what it cut, with fluid and spoilt ends', () => {
  const events = [
    began('D'),
    cut('D', 80, { goodEnds: 78 }),
    cut('D', 20, { connectionId: 'T' }),
    ended('D'),
  ];
  const [s, t] = of(events);
  expect(s).toMatchObject({
    connectionId: 'S',
    goodEnds: 78,
    spoiltEnds: 2,
    fluidMinor: 2000,
    spoiltMinor: 6000,
  });
  expect(s?.edgeMinor).toBeCloseTo(9600, 9);
  expect(s?.perGoodEndMinor).toBeCloseTo(17_600 / 78, 9);
  expect(t?.edgeMinor).toBeCloseTo(2400, 9);
});

// source: hand. 40 an end for 78 good ends; without it the gauges cost nothing.
it('adds the gauges of the good ends as a line of its own', () => {
  const events = [began('D'), cut('D', 80, { goodEnds: 78 }), ended('D')];
  const input = { events, parts: [part], costs: DEFAULT_COSTS, fluidMinor: () => 25, wearFactor: () => 1 };
  const [with40] = endCosts({ ...input, gaugeMinor: () => 40 });
  const [without] = endCosts(input);
  expect([with40?.gaugeMinor, without?.gaugeMinor]).toEqual([78 * 40, 0]);
  expect((with40?.perGoodEndMinor ?? 0) - (without?.perGoodEndMinor ?? 0)).toBeCloseTo(40, 9);
});

// source: hand. One finished after 1 000 turns, one with 250 behind it: a quarter of its price so far.
it('counts a tool that still cuts with the part of its life that is used', () => {
  const events = [began('D'), cut('D', 100), ended('D'), began('E'), cut('E', 25)];
  expect(of(events)[0]?.edgeMinor).toBeCloseTo(15_000, 9);
  expect(of(events, [{ ...part, priceMinor: null as never }])[0]).toMatchObject({
    edgeMinor: null,
    perGoodEndMinor: null,
  });
  expect(of([])).toEqual([]);
});

// source: hand. 30 ends of a material that wears three times as fast, and 10 of the reference: 90 parts to 10.
it('charges a hard material for the wear that it does', () => {
  const [hard, plain] = of([began('D'), cut('D', 30, { materialId: 'HARD' }), cut('D', 10), ended('D')]);
  expect([hard?.edgeMinor, plain?.edgeMinor]).toEqual([expect.closeTo(10_800, 6), expect.closeTo(1_200, 6)]);
});
