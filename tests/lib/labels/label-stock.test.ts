import { expect, it } from 'vitest';
import { findStock, LABEL_STOCKS, labelPlaces, labelsPerPage } from '@/lib/labels/label-stock';

const CUT_MM = 0.011;

// source: published. ISO 216: A4 is 210 × 297 mm; US letter is 8.5 × 11 in = 215.9 × 279.4 mm.
it('pages have their standard sizes', () => {
  const pages = LABEL_STOCKS.filter(({ columns }) => columns > 1).map(({ id, pageWidthMm, pageHeightMm }) => [
    id.split('-')[0],
    pageWidthMm,
    pageHeightMm,
  ]);
  for (const [paper, width, height] of pages)
    expect([width, height]).toEqual(paper === 'a4' ? [210, 297] : [215.9, 279.4]);
});

// source: identity. Labels lie on their page, evenly about its middle, and no two overlap.
it.each(LABEL_STOCKS.map((stock) => [stock.id, stock] as const))(
  '%s: every label lies on its page',
  (_id, stock) => {
    const places = labelPlaces(stock, { count: labelsPerPage(stock), firstPlace: 1 });
    expect(new Set(places.map(({ xMm, yMm }) => `${xMm} ${yMm}`)).size).toBe(labelsPerPage(stock));
    const right = Math.max(...places.map(({ xMm }) => xMm)) + stock.labelWidthMm;
    const foot = Math.max(...places.map(({ yMm }) => yMm)) + stock.labelHeightMm;
    expect(Math.abs(stock.pageWidthMm - right - stock.leftMm)).toBeLessThan(CUT_MM);
    expect(Math.abs(stock.pageHeightMm - foot - stock.topMm)).toBeLessThan(CUT_MM);
    expect(stock.gapAcrossMm).toBeGreaterThanOrEqual(0);
    expect(places.every(({ page }) => page === 0)).toBe(true);
  },
);

// source: hand. 24 labels to a sheet: the first free place is 23, so two go on this sheet and the third on the next.
it('goes on from a sheet that was begun', () => {
  const sheet = findStock('a4-3x8');
  if (sheet === undefined) throw new Error('the sheet is known');
  expect(labelPlaces(sheet, { count: 3, firstPlace: 23 })).toEqual([
    { page: 0, xMm: 70, yMm: 259.5 },
    { page: 0, xMm: 140, yMm: 259.5 },
    { page: 1, xMm: 0, yMm: 0.5 },
  ]);
  expect(() => labelPlaces(sheet, { count: 1, firstPlace: 25 })).toThrow('invariant broken');
  expect(() => labelPlaces(sheet, { count: -1, firstPlace: 1 })).toThrow('invariant broken');
  expect(findStock('none')).toBeUndefined();
});
