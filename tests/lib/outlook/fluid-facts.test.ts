import { describe, expect, it } from 'vitest';
import {
  bottleRatio,
  chlorinatedOf,
  fluidWork,
  learntUse,
  lotOf,
  shopBottles,
} from '@/lib/outlook/fluid-facts';
import { FluidLotSchema } from '@/lib/shop/fluid-lot';
import { setParts, shopRecord, toolFacts } from '../../support/shop-record';

const part = setParts().find(({ role }) => role === 'fluid');
if (part === undefined) throw new Error('a complete set has a fluid');
const lot = FluidLotSchema.parse({ partId: part.id, lot: 'L1', shelfLife: 'fixed', chlorinated: 'no' });
const bottle = (id: string, change = {}) =>
  toolFacts({ id, role: 'fluid', levelMl: 500, lot: 'L1', ...change });

describe('bottles', () => {
  // source: hand. The lot’s answer goes before the product’s; a bottle counts its own drops, else what is said of the product.
  it('know their lot, whether they are chlorinated, and their drops', () => {
    const tools = [
      bottle('F-1', { dropsPerMl: 44 }),
      bottle('F-2', { lot: 'L2' }),
      bottle('F-3', { state: 'scrapped' }),
    ];
    const facts = shopRecord({ tools, fluidLots: [lot] });
    const [first, second] = shopBottles(facts);
    expect(shopBottles(facts).map(({ toolId }) => toolId)).toEqual(['F-1', 'F-2']);
    expect(first).toMatchObject({ chlorinated: 'no', dropsPerMl: 44, lotFacts: lot });
    expect(second).toMatchObject({ chlorinated: part.chlorinated, dropsPerMl: 40, lotFacts: undefined });
    expect(lotOf(facts, { partId: part.id, lot: 'L1' })).toBe(lot);
    expect(chlorinatedOf(facts, { partId: part.id, lot: 'L9' }, part)).toBe('unknown');
  });

  // source: hand. Titanium by the shop’s table; no duty stated is ordinary service.
  it('are asked for work in a material and for a service', () => {
    expect(fluidWork(shopRecord(), { materialId: 'ti-2' })).toMatchObject({
      titanium: true,
      duty: 'ordinary',
    });
    expect(fluidWork(shopRecord(), { materialId: '316-cw', duty: 'oxygen' })).toMatchObject({
      ...{ titanium: false, duty: 'oxygen' },
    });
  });
});

describe('learntUse', () => {
  // source: identity. Without levels the shop’s factor is all there is; common practice 3.
  it('is the shop’s factor until levels are read', () => {
    expect(learntUse(shopRecord()).ratio.mean).toBeCloseTo(3, 12);
  });

  // source: hand. 4000 drops at 40 to the mL are 100 mL planned, 400 mL gone: (3 × 160 + 400) ÷ 260. The bottle’s own is
  // drawn to that: (880 ÷ 260 × 160 + 400) ÷ 260.
  it('learns from a level read twice, for the shop and for the bottle', () => {
    const facts = shopRecord({
      tools: [bottle('F-1', { openedOnDay: '2026-01-01' })],
      fluidLots: [lot],
      fluidLog: {
        levels: [
          { toolId: 'F-1', onDay: '2026-01-01', levelMl: 1000 },
          { toolId: 'F-1', onDay: '2026-02-01', levelMl: 600 },
        ],
        rows: [{ onDay: '2026-01-10', materialId: '316-cw', drops: 4000, fluidId: null }],
      },
    });
    expect(learntUse(facts).ratio.mean).toBeCloseTo(880 / 260, 12);
    expect(bottleRatio(facts, 'F-1').mean).toBeCloseTo(((880 / 260) * 160 + 400) / 260, 12);
    expect(bottleRatio(facts, 'F-9').mean).toBeCloseTo(880 / 260, 12);
  });
});
