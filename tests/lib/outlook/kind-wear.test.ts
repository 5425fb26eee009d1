import { expect, it } from 'vitest';
import { conditionsSeen, kindWear } from '@/lib/outlook/kind-wear';
import { defaultBelief } from '@/lib/outlook/life-beliefs';
import { shopEnsemble } from '@/lib/outlook/shop-ensemble';
import { edgeFacts, use } from '../../support/edge-facts';
import { toolFacts } from '../../support/shop-record';
import { wearFacts, wearShop } from '../../support/wear-shop';

// source: hand. Lives of 80 to 120 lie close together: they wear out, far from breaking by chance. One of 11 was dropped.
it('says how the edges of a kind end', () => {
  const wear = kindWear(wearShop(), 'die');
  expect(wear?.shape.low).toBeGreaterThan(2);
  expect(wear?.probabilityWearsOut).toBeGreaterThan(0.99);
  expect(wear?.livesPerIncident.median).toBeGreaterThan(3);
  expect(wear?.livesPerIncident.median).toBeLessThan(30);
  expect(wear?.counts.incident).toBe(1);
});

// source: formula. With nothing cut dry the figure is what was believed: 1.5, from 0.9 to 2.5 four times in five
// (e^(±1.2816 × 0.4) about 1.5), within the Monte Carlo error of 2,048 draws.
it('says what was believed of what the log is silent about', () => {
  const wear = kindWear(wearShop(), 'die');
  expect(wear?.seen).toEqual({ regroundEdges: 0, dryEnds: 0, reworkEnds: 0 });
  expect((wear?.dry.median ?? 0) / 1.5).toBeCloseTo(1, 1);
  expect((wear?.dry.low ?? 0) / 0.898).toBeCloseTo(1, 1);
});

// source: identity. The share of the draws; of a shop with nothing in its log, what was believed, to one draw in a hundred.
it('says how likely it is that a few last far longer', () => {
  const wear = kindWear(wearShop(), 'die');
  expect(wear?.longTail.believed).toBe(0.25);
  expect(wear?.longTail.probability).toBeGreaterThan(0);
  expect(wear?.longTail.probability).toBeLessThan(1);
  const idle = { ...wearShop().facts, edges: [] };
  const young = kindWear({ facts: idle, ensemble: shopEnsemble(idle) }, 'die');
  expect(Math.abs((young?.longTail.probability ?? 0) - 0.25)).toBeLessThan(0.01);
});

// source: hand. A shop that is sure that dies break by chance is believed: the figure moves toward 1.
it('moves with what the shop believes before the log', () => {
  const belief = { ...defaultBelief('die'), shape: { typical: 1, giveOrTake: 1.05 } };
  const sure = kindWear(wearShop({ beliefs: [belief] }), 'die');
  expect(sure?.shape.median).toBeLessThan(1.3);
});

// source: hand. 4 dry and 3 recut of 20 ends on the second edge of a blade; a die's rows count for dies.
it('conditionsSeen counts ends and reground edges of one kind', () => {
  const facts = {
    tools: [toolFacts({ id: 'B-1', role: 'blade' }), toolFacts({ id: 'D-1', role: 'die' })],
    edges: [
      edgeFacts('B-1', { use: [use(9)] }),
      edgeFacts('B-1', { edgeNo: 2, use: [use(4, { dry: true }), use(3, { rework: true }), use(13)] }),
      edgeFacts('B-1', { edgeNo: 3 }),
      edgeFacts('D-1', { use: [use(7, { dry: true })] }),
    ],
  };
  expect(conditionsSeen(facts, 'blade')).toEqual({ regroundEdges: 1, dryEnds: 4, reworkEnds: 3 });
  expect(conditionsSeen(facts, 'die')).toEqual({ regroundEdges: 0, dryEnds: 7, reworkEnds: 0 });
  expect(conditionsSeen(wearFacts(), 'blade').dryEnds).toBe(0);
});
