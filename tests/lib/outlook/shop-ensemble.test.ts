import { describe, expect, it } from 'vitest';
import { shopEnsemble } from '@/lib/outlook/shop-ensemble';
import type { EdgeFacts, ShopFacts } from '@/lib/outlook/shop-facts';
import { edgeFacts, use } from '../../support/edge-facts';
import { shopRecord, toolFacts } from '../../support/shop-record';

const die = toolFacts({ id: 'D-1', role: 'die' });
const record = (tools: ShopFacts['tools'], edges: readonly EdgeFacts[]) => shopRecord({ tools, edges });

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
