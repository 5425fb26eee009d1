import { expect, it } from 'vitest';
import { FluidLotSchema, fluidLotId } from '@/lib/shop/fluid-lot';
import { GHS_CODES } from '@/lib/shop/ghs';

const least = { partId: 'oil', lot: 'L07', shelfLife: 'fixed', chlorinated: 'unknown' };

// source: hand. A lot number is known with its product.
it('a lot is known by its product and number', () => {
  expect(fluidLotId({ partId: 'oil', lot: 'L07' })).toBe('oil/L07');
});

// source: hand. What nobody typed is empty, not guessed.
it('what is not typed stays empty', () => {
  expect(FluidLotSchema.parse(least)).toEqual({
    ...least,
    ...{ supplierAnswer: '', productIdentifier: '', sdsRevision: '', sdsOnDay: null, sdsKeptAt: '' },
    ...{ signal: null, pictograms: [], hazards: [], usedAt: '', storage: '', firstAid: '', disposal: '' },
    reviewOnDay: null,
  });
});

// source: published. UN GHS Annex 3: nine pictograms, GHS01 to GHS09.
it('takes the nine pictograms and no other', () => {
  expect(GHS_CODES).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9].map((n) => `GHS0${n}`));
  expect(FluidLotSchema.safeParse({ ...least, pictograms: ['GHS10'] }).success).toBe(false);
});
