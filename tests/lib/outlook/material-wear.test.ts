import { expect, it } from 'vitest';
import { materialWears } from '@/lib/outlook/material-wear';
import { edgeFacts, use } from '../../support/edge-facts';
import { toolFacts } from '../../support/shop-record';
import { wearShop } from '../../support/wear-shop';

const shop = wearShop({
  tools: [toolFacts({ id: 'D-1', role: 'die' }), toolFacts({ id: 'B-1', role: 'blade' })],
  edges: [
    edgeFacts('D-1', {
      use: [use(4), use(6, { materialId: '2507' }), use(2, { materialId: '2507', dry: true })],
    }),
    edgeFacts('B-1', { use: [use(3, { materialId: '2507' }), use(5, { materialId: '625' })] }),
  ],
});
const wears = materialWears(shop);

// source: hand. 8 + 3 ends of 2507, 5 of 625, none of the others; the reference counts one and is not listed.
it('lists the materials, those cut most first, with the ends behind each', () => {
  expect(wears.map(({ material }) => material.id).slice(0, 2)).toEqual(['2507', '625']);
  expect(wears.map(({ material }) => material.id)).not.toContain('316-cw');
  expect(wears[0]?.kinds.die.ends).toBe(8);
  expect(wears[0]?.kinds.blade.ends).toBe(3);
  expect(wears.at(-1)?.kinds.die.ends).toBe(0);
});

// source: identity. The factor is the one behind every forecast; with hardly anything cut it is near what is believed, 2.5.
it('gives the factor that every forecast uses, beside what was believed', () => {
  const { effect } = wears[0]?.kinds.die ?? {};
  const draws = shop.ensemble.materialFactor('die', '2507')?.toSorted();
  expect(effect?.factor.median).toBe(draws?.[draws.length / 2]);
  expect(effect?.believed?.median).toBeCloseTo(2.5, 9);
});
