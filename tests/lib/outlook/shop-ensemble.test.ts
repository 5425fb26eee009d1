import { describe, expect, it } from 'vitest';
import { shopEnsemble, toolsInHand } from '@/lib/outlook/shop-ensemble';
import type { EdgeFacts, ShopFacts } from '@/lib/outlook/shop-facts';
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

describe('shopEnsemble', () => {
  const dies = Array.from({ length: 12 }, (_, i) => ({ ...die, id: `D-${10 + i}` }));
  const ended = (end: EdgeFacts['end']) =>
    record(
      [...dies, die],
      [
        ...dies.map(({ id }, i) => edgeFacts(id, { end, lastUse: use(4), use: [use(30 + i)] })),
        edgeFacts('D-1'),
      ],
    );
  const likely = (facts: ShopFacts) => {
    const life = shopEnsemble(facts).residualLife('D-1');
    return life === undefined ? Number.NaN : (life.sort()[life.length >> 1] as number);
  };

  // source: hand. Twelve dies that wore out after 30 to 41 ends say that a new one lasts about 36 (378 turns); the same
  // twelve taken out good say that it lasts longer than that.
  it('learns from what wore out, and hears what did not wear out as "longer than"', () => {
    const worn = likely(ended('worn'));
    expect(worn / 378).toBeGreaterThan(0.8);
    expect(worn / 378).toBeLessThan(1.25);
    expect(likely(ended('removed-working'))).toBeGreaterThan(1.8 * worn);
  });

  // source: hand. A dropped die is no evidence of wear, but dies are then dropped often: less is left than if all were good.
  it('takes accidents for accidents', () => {
    const dropped = ended('incident');
    expect(shopEnsemble(dropped).fit('die')?.counts).toMatchObject({ worn: 0, incident: 12 });
    expect(likely(dropped)).toBeLessThan(likely(ended('removed-working')));
  });

  // source: hand. A die seen at its limit has less left than one nobody looked at, one seen fresh has more.
  it('listens to what was seen, for the worse and for the better', () => {
    const seen = (grade: 'fresh' | 'at-limit') => {
      const facts = ended('worn');
      const readings = [
        { entryId: 'r', onDay: '2026-03-02', finding: { method: 'grade', grade } as const, use: [use(28)] },
      ];
      const edges = facts.edges.map((edge) =>
        edge.toolId === 'D-1' ? edgeFacts('D-1', { use: [use(28)], readings }) : edge,
      );
      return likely({ ...facts, edges });
    };
    const unseen = (() => {
      const facts = ended('worn');
      const edges = facts.edges.map((edge) =>
        edge.toolId === 'D-1' ? edgeFacts('D-1', { use: [use(28)] }) : edge,
      );
      return likely({ ...facts, edges });
    })();
    expect(seen('at-limit')).toBeLessThan(0.8 * unseen);
    expect(seen('fresh')).toBeGreaterThan(1.2 * unseen);
  });

  // source: identity. The order of rows is no evidence.
  it('is the same to the digit whatever the order of the record', () => {
    const facts = ended('worn');
    const turned = { ...facts, tools: [...facts.tools].reverse(), edges: [...facts.edges].reverse() };
    expect(shopEnsemble(turned).residualLife('D-1')).toEqual(shopEnsemble(facts).residualLife('D-1'));
  });

  // source: hand. Stated.
  it('knows new tools of every part with an edge, and no others', () => {
    const ensemble = shopEnsemble(shopRecord());
    expect(ensemble.newLife('die-3-8', 0)).toHaveLength(ensemble.drawCount);
    expect(ensemble.newLife('blade-3-8-medium', 0)).toHaveLength(ensemble.drawCount);
    expect(ensemble.newLife('go-ring-3-8', 0)).toBeUndefined();
    expect(ensemble.residualLife('D-1')).toBeUndefined();
  });
});
