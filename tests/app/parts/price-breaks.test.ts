import { expect, it } from 'vitest';
import { breaksText, readBreaks } from '@/app/parts/_parts/price-breaks';

// source: identity. What is written reads back; what cannot be read is no number, which the door refuses.
it('reads price breaks as they are typed', () => {
  const breaks = [
    { fromQuantity: 5, priceMinor: 9_500 },
    { fromQuantity: 10, priceMinor: 8_850 },
  ];
  expect(breaksText(breaks)).toBe('5: 95, 10: 88.5');
  expect(readBreaks(breaksText(breaks))).toEqual(breaks);
  expect(readBreaks('')).toEqual([]);
  expect(readBreaks('many')).toEqual([{ fromQuantity: Number.NaN, priceMinor: Number.NaN }]);
});
