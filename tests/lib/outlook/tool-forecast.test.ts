import { describe, expect, it } from 'vitest';
import { shopEnsemble } from '@/lib/outlook/shop-ensemble';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { toolForecast } from '@/lib/outlook/tool-forecast';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import type { LifeGuess } from '@/lib/shop/noun';
import { edgeFacts, use } from '../../support/edge-facts';
import { shopRecord, toolFacts } from '../../support/shop-record';

const guesses: LifeGuess[] = [
  { partId: 'die-3-8', connectionId: '3-8-medium', ends: 100, giveOrTake: 1.05 },
  { partId: 'blade-3-8-medium', connectionId: '3-8-medium', ends: 60, giveOrTake: 2 },
];
const medium = { connectionId: '3-8-medium', materialId: '316-cw' };
const facts = record();

function record(change: Partial<ShopFacts> = {}): ShopFacts {
  return shopRecord({
    guesses,
    connections: SHIPPED_CONNECTIONS,
    tools: [
      toolFacts({ id: 'D-1', role: 'die' }),
      toolFacts({ id: 'D-2', role: 'die', opening: { known: 'unknown' } }),
      toolFacts({ id: 'B-1', role: 'blade' }),
      toolFacts({ id: 'BDY-A', role: 'coning-body' }),
    ],
    edges: [edgeFacts('D-1', { use: [use(10)], lastUse: use(10) }), edgeFacts('D-2'), edgeFacts('B-1')],
    ...change,
  });
}

function forecastOf(toolId: string, cut = medium, of = facts) {
  return toolForecast(of, shopEnsemble(of), { toolId, cut });
}

function known(toolId: string, cut = medium, of = facts) {
  const forecast = forecastOf(toolId, cut, of);
  if (forecast === undefined) throw new Error('no forecast');
  return forecast;
}

describe('toolForecast', () => {
  // source: identity. Safe ends are the most that nine futures in ten finish, likely ends the most that half of them do.
  it('its figures are counts over the same futures as its chances', () => {
    const left = known('D-1');
    const shares: [number, number][] = [
      [left.safeEnds, 0.9],
      [left.likelyEnds, 0.5],
    ];
    for (const [ends, share] of shares) {
      expect(left.probabilityFinishes(ends), `${ends}`).toBeGreaterThanOrEqual(share);
      expect(left.probabilityFinishes(ends + 1), `${ends + 1}`).toBeLessThan(share);
    }
    expect(left.lowEnds).toBe(left.safeEnds);
    const held = left.probabilityFinishes(left.lowEnds) - left.probabilityFinishes(left.highEnds + 1);
    const oneMore = left.probabilityFinishes(left.lowEnds) - left.probabilityFinishes(left.highEnds + 2);
    const oneLess = left.probabilityFinishes(left.lowEnds) - left.probabilityFinishes(left.highEnds);
    expect(Math.abs(held - 0.8)).toBeLessThanOrEqual(Math.abs(oneMore - 0.8));
    expect(Math.abs(held - 0.8)).toBeLessThanOrEqual(Math.abs(oneLess - 0.8));
    expect(left.safeEnds).toBeLessThan(left.likelyEnds);
    expect(left.probabilityFinishes(0)).toBe(1);
    expect(left.safeEndsAt(0.9)).toBe(left.safeEnds);
    expect(left.safeEndsAt(0.5)).toBe(left.likelyEnds);
    expect(left.safeEndsAt(0.95)).toBeLessThanOrEqual(left.safeEndsAt(0.8));
  });

  // source: identity. Nothing but the exposure of an end differs: 18 turns for the long thread, 10.5 for the short one.
  it('counts in ends of what is about to be cut', () => {
    const short = known('D-1');
    const long = known('D-1', { ...medium, connectionId: '3-8-high' });
    for (const ends of [7, 35, 70])
      expect(long.probabilityFinishes(ends)).toBe(short.probabilityFinishes((ends * 18) / 10.5));
    expect(long.likelyEnds).toBeGreaterThanOrEqual(Math.floor((short.likelyEnds * 10.5) / 18));
    expect(long.likelyEnds).toBeLessThan(((short.likelyEnds + 1) * 10.5) / 18);
  });

  // source: hand. 2507 is believed to count about 2.5 of the reference, so far fewer ends are left.
  it('counts fewer ends in a harder material, and says by how much', () => {
    const hard = known('D-1', { ...medium, materialId: '2507' });
    expect(hard.likelyEnds).toBeLessThan(known('D-1').likelyEnds / 1.8);
    expect(hard.reasons.materialFactor?.median).toBeCloseTo(2.5, 1);
    expect(known('D-1').reasons.materialFactor).toBeUndefined();
  });

  // source: hand. More cut, less left; every row counts once.
  it('has less left the more the edge has cut', () => {
    const after = (ends: number) =>
      known('D-1', medium, record({ edges: [edgeFacts('D-1', { use: [use(ends)] })] }));
    const likely = [0, 20, 40, 60].map((ends) => after(ends).likelyEnds);
    expect(likely).toEqual([...likely].sort((a, b) => b - a));
    expect(new Set(likely).size).toBe(4);
  });

  // source: hand. Stated cases.
  it('says whether the edge’s start is known, and what the figure rests on', () => {
    expect([known('D-1').startKnown, known('D-2').startKnown]).toEqual([true, false]);
    const edges = [edgeFacts('B-1', { end: 'removed-working' }), edgeFacts('B-1', { edgeNo: 2 })];
    const tools = [toolFacts({ id: 'B-1', role: 'blade', opening: { known: 'unknown' } })];
    expect(known('B-1', medium, record({ tools, edges })).startKnown).toBe(true);
    const out = [toolFacts({ id: 'B-1', role: 'blade', opening: { known: 'unknown' }, state: 'regrind' })];
    expect(known('B-1', medium, record({ tools: out })).startKnown).toBe(true);
    expect(known('D-1').reasons).toMatchObject({ restsOn: 'first-guess-of-part', kind: 'die' });
    expect(known('B-1', medium, record({ guesses: [] })).reasons.restsOn).toBe('default');
  });

  it('is silent about what nobody knows', () => {
    expect(forecastOf('D-9')).toBeUndefined();
    expect(forecastOf('BDY-A')).toBeUndefined();
    expect(forecastOf('D-1', { ...medium, connectionId: '1-high' })).toBeUndefined();
    expect(forecastOf('D-1', { ...medium, materialId: 'tin' })).toBeUndefined();
    const scrapped = [toolFacts({ id: 'D-1', role: 'die', state: 'scrapped' })];
    expect(forecastOf('D-1', medium, record({ tools: scrapped }))).toBeUndefined();
  });
});

// source: hand. The last reading of the present edge; an edge that is to come back from regrind has not been seen.
it('names what was last seen of the present edge', () => {
  const looked = (grade: 'fresh' | 'marked') => ({
    ...{ entryId: grade, onDay: '2026-03-02', use: [use(10)] },
    finding: { method: 'grade', grade } as const,
  });
  const readings = [looked('fresh'), looked('marked')];
  const seen = record({ edges: [edgeFacts('D-1', { use: [use(10)], readings }), edgeFacts('B-1')] });
  expect(known('D-1', medium, seen).lastLook).toEqual({ method: 'grade', grade: 'marked' });
  expect(known('D-1').lastLook).toBeUndefined();
  const out = record({
    tools: [toolFacts({ id: 'B-1', role: 'blade', state: 'regrind' })],
    edges: [edgeFacts('B-1', { end: 'worn', use: [use(10)], readings })],
  });
  expect(known('B-1', medium, out).lastLook).toBeUndefined();
});
