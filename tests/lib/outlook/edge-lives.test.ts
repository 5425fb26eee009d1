import { expect, it } from 'vitest';
import { edgeLives } from '@/lib/outlook/edge-lives';
import { edgeFacts, use } from '../../support/edge-facts';
import { toolFacts } from '../../support/shop-record';
import { wearShop } from '../../support/wear-shop';

// source: hand. In the reference material and on its own connection an end is an end; where all ends of the last row were
// good, it wore out at the last of them, so half an end before is the middle of what is known.
it('an edge that cut only its own ends in the reference material has lived as many', () => {
  const lives = edgeLives(wearShop(), 'die-3-8');
  expect(lives).toHaveLength(11);
  expect(lives[0]).toMatchObject({ end: 'worn', cutEnds: 120 });
  expect(lives[0]?.ageEnds).toBeCloseTo(119.5, 9);
  const dropped = lives.find(({ end }) => end === 'incident');
  expect(dropped?.ageEnds).toBeCloseTo(30, 9);
  expect(lives.at(-1)).toMatchObject({ end: 'in-service', cutEnds: 20 });
});

// source: identity. The factor is the most probable one of the same fit.
it('a harder material, a dry cut and a recut count by their factors', () => {
  const one = (change: Parameters<typeof use>[1]) => {
    const shop = wearShop({
      tools: [toolFacts({ id: 'D-1', role: 'die' })],
      edges: [edgeFacts('D-1', { use: [use(10, change)] })],
    });
    return { life: edgeLives(shop, 'die-3-8')[0]?.ageEnds ?? 0, mode: shop.ensemble.fit('die')?.mode ?? {} };
  };
  const hard = one({ materialId: '2507' });
  expect(hard.life).toBeCloseTo(10 * Math.exp(hard.mode['material:2507'] ?? 0), 9);
  expect(hard.life).toBeGreaterThan(15);
  const rough = one({ dry: true, rework: true });
  expect(rough.life).toBeCloseTo(10 * Math.exp((rough.mode.dry ?? 0) + (rough.mode.rework ?? 0)), 9);
});

// source: hand. A reground edge lasts less, so what it has cut counts for more of a new edge's life.
it('a reground edge is told as a new one', () => {
  const shop = wearShop({
    tools: [toolFacts({ id: 'B-1', role: 'blade' })],
    edges: [1, 2].map((edgeNo) =>
      edgeFacts('B-1', { edgeNo, end: 'removed-working', use: [use(10, { exposureMicro: 592_403_700 })] }),
    ),
  });
  const [reground, first] = edgeLives(shop, 'blade-3-8-medium');
  expect(first?.ageEnds).toBeCloseTo(10, 4);
  expect(reground?.edgeNo).toBe(2);
  expect(reground?.ageEnds).toBeGreaterThan(10.5);
});

// source: hand. Stated.
it('of a part that is not there are none', () => {
  expect(edgeLives(wearShop(), 'gone')).toEqual([]);
});
