import { describe, expect, it } from 'vitest';
import { fluidLabel, HAZARDS_UNKNOWN, sdsWords } from '@/lib/fluid/label';
import { FluidLotSchema } from '@/lib/shop/fluid-lot';

const facts = {
  ...{
    toolId: 'F-L04',
    productName: 'Usual oil',
    lot: 'L04',
    openedOnDay: '2026-01-14',
    useByDay: '2027-01-14',
  },
  ...{ chlorinated: 'yes' as const, lotFacts: undefined },
};
const lot = FluidLotSchema.parse({
  ...{ partId: 'oil', lot: 'L04', shelfLife: 'fixed', chlorinated: 'yes', productIdentifier: 'Neat oil 7' },
  ...{ sdsRevision: '3.1', sdsOnDay: '2025-03-26', sdsKeptAt: 'crib' },
  ...{ signal: 'warning', pictograms: ['GHS07'], hazards: ['Causes skin irritation'] },
});

// source: published. 29 CFR 1910.1200(f): product identifier, and words, pictures or symbols that give the hazards.
describe('fluidLabel', () => {
  it('invents nothing: without a lot’s record it sends to the SDS', () => {
    expect(fluidLabel(facts)).toMatchObject({
      ...{ identifier: 'Usual oil', signal: null, pictograms: [], hazards: [] },
      ...{ unknown: HAZARDS_UNKNOWN, sds: 'SDS: revision not written down' },
    });
    expect(HAZARDS_UNKNOWN).toBe('hazards: not written down — read the SDS');
  });

  it('carries what is written down of the lot, and the chlorine', () => {
    const label = fluidLabel({ ...facts, lotFacts: lot });
    expect(label).toMatchObject({ identifier: 'Neat oil 7', signal: 'warning', pictograms: ['GHS07'] });
    expect(label).toMatchObject({ unknown: null, hazards: ['Causes skin irritation'] });
    expect(label.chlorinated).toContain('YES');
    expect(fluidLabel({ ...facts, chlorinated: 'unknown' }).chlorinated).toContain('unknown');
  });

  it('a sheet that says there is no signal word is written down too', () => {
    const none = { ...lot, signal: 'none' as const, pictograms: [], hazards: [] };
    expect(fluidLabel({ ...facts, lotFacts: none }).unknown).toBeNull();
  });

  it('names the sheet, its day and where it is kept, as far as written down', () => {
    expect(sdsWords(lot)).toBe('SDS rev 3.1 of 2025-03-26 at crib');
    expect(sdsWords({ ...lot, sdsOnDay: null, sdsKeptAt: '' })).toBe(
      'SDS rev 3.1, where it is kept is not written down',
    );
  });
});
