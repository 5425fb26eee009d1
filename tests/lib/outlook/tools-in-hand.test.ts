import { describe, expect, it } from 'vitest';
import type { EdgeFacts, ShopFacts } from '@/lib/outlook/shop-facts';
import { partsOnOffer, toolsInHand } from '@/lib/outlook/tools-in-hand';
import { edgeFacts, use } from '../../support/edge-facts';
import { shopRecord, toolFacts } from '../../support/shop-record';

const die = toolFacts({ id: 'D-1', role: 'die' });
const blade = toolFacts({ id: 'B-1', role: 'blade' });
const record = (tools: ShopFacts['tools'], edges: readonly EdgeFacts[]) => shopRecord({ tools, edges });

// source: hand. A tool is in hand while an edge of it is in service; 40 ends of 10.5 turns are 420.
describe('toolsInHand', () => {
  it('takes the present edge with all that it has cut', () => {
    const facts = record([die], [edgeFacts('D-1', { use: [use(40)] })]);
    expect(toolsInHand(facts)).toEqual([
      {
        toolId: 'D-1',
        kind: 'die',
        partId: 'die-3-8',
        odIn: 0.375,
        regrinds: 0,
        exposure: [{ materialId: '316-cw', dry: false, rework: false, base: 420 }],
      },
    ]);
  });

  it('takes along what was seen of that edge, as a share of its life', () => {
    const seen = {
      entryId: 'r',
      onDay: '2026-03-02',
      finding: { method: 'grade', grade: 'at-limit' },
    } as const;
    const facts = record(
      [die],
      [edgeFacts('D-1', { use: [use(40)], readings: [{ ...seen, use: [use(30)] }] })],
    );
    const [inHand] = toolsInHand(facts);
    expect(inHand?.readings).toMatchObject([{ worn: 1, exposure: [{ base: 315 }] }]);
  });

  it('of a blade reground takes the last edge, whatever the order of the rows', () => {
    const edges = [edgeFacts('B-1', { end: 'worn', use: [use(9)] }), edgeFacts('B-1', { edgeNo: 2 })];
    for (const rows of [edges, [...edges].reverse()])
      expect(toolsInHand(record([blade], rows))).toMatchObject([{ regrinds: 1, exposure: [] }]);
  });

  it('of a blade out for regrind takes the edge that it will come back with', () => {
    const out = { ...blade, state: 'regrind' as const };
    for (const end of ['worn', null] as const) {
      const edges = [edgeFacts('B-1', { end, use: [use(9)] })];
      expect(toolsInHand(record([out], edges)), `${end}`).toMatchObject([{ regrinds: 1, exposure: [] }]);
    }
  });

  it('leaves out what is gone, what has no edge left and what has none at all', () => {
    const gone = (['scrapped', 'lost'] as const).map((state) => ({ ...die, id: state, state }));
    const tools = [
      ...gone,
      { ...die, id: 'ended', state: 'quarantined' as const },
      { ...die, id: 'no-edge' },
      { ...die, id: 'no-part', partId: 'gone' },
      toolFacts({ id: 'G-1', role: 'go-ring' }),
      { ...die, state: 'quarantined' as const },
    ];
    const edges = tools.flatMap(({ id }) =>
      id === 'no-edge' ? [] : [edgeFacts(id, { end: id === 'ended' ? 'incident' : null })],
    );
    expect(toolsInHand(record(tools, edges)).map(({ toolId }) => toolId)).toEqual(['D-1']);
  });
});

// source: hand. Only what has an edge and a size can be bought as a future: dies and blades.
it('partsOnOffer names the parts with an edge', () => {
  const kinds = partsOnOffer(record([], [])).map(({ kind }) => kind);
  expect(kinds).toContain('die');
  expect(kinds).toContain('blade');
  expect(new Set(kinds).size).toBe(2);
});
