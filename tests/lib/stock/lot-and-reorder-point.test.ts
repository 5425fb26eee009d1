import { expect, it } from 'vitest';
import { normalCdf } from '@/lib/numeric/normal';
import { eoqWithSafetyStock, lotAndReorderPoint } from '@/lib/stock/lot-and-reorder-point';
import { standardNormalLoss } from '@/lib/stock/normal-loss';
import { relativeMiss } from '@/tests/support/relative-miss';

const REVIEW = {
  demandMean: 1300,
  demandSd: 150,
  leadTime: 1 / 12,
  orderCost: 8,
  holdingCost: 0.225,
  shortCost: 7.5,
};

// source: published. Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Example 5.5.
it('economic lot and safety stock', () => {
  const { reorderPoint, lot } = eoqWithSafetyStock(REVIEW);
  expect(relativeMiss(reorderPoint, 190.3369965715624)).toBeLessThan(1e-10);
  expect(relativeMiss(lot, 304.0467800264368)).toBeLessThan(1e-10);
});

// source: formula. Both conditions of the optimum hold, and the lot is larger than the plain economic one.
it('lot and point suited to each other', () => {
  const found = lotAndReorderPoint(REVIEW);
  const sd = 150 * Math.sqrt(1 / 12);
  const z = ((found?.reorderPoint ?? 0) - 1300 / 12) / sd;
  const lot = found?.lot ?? 0;
  expect(1 - normalCdf(z)).toBeCloseTo((lot * 0.225) / (7.5 * 1300), 10);
  expect(lot).toBeCloseTo(Math.sqrt((2 * 1300 * (8 + 7.5 * sd * standardNormalLoss(z))) / 0.225), 8);
  expect(lot).toBeGreaterThan(304.05);
  expect(lotAndReorderPoint({ ...REVIEW, shortCost: 1e-6 })).toBeUndefined();
});
