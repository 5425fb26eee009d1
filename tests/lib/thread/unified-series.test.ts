import { expect, it } from 'vitest';
import { lookAlikes, numberedSizeIn, threadSeries } from '@/lib/thread/unified-series';
import { rational } from '@/lib/units/rational';

// source: published, from memory. ASME B1.1 standard series combinations; 1-14 is not in the fine series, and is named UNS.
it.each([
  [1, 4, 28, 'UNF'],
  [5, 16, 24, 'UNF'],
  [3, 8, 24, 'UNF'],
  [7, 16, 20, 'UNF'],
  [1, 2, 20, 'UNF'],
  [9, 16, 18, 'UNF'],
  [5, 8, 18, 'UNF'],
  [3, 4, 16, 'UNF'],
  [7, 8, 14, 'UNF'],
  [1, 1, 12, 'UNF'],
  [1, 1, 14, 'UNS'],
  [1, 4, 20, 'UNC'],
  [1, 2, 13, 'UNC'],
  [1, 1, 8, 'UNC'],
  [9, 4, 4.5, 'UNC'],
  [9, 16, 24, 'UNEF'],
  [1, 2, 28, 'UNEF'],
  [15, 16, 12, 'UN'],
  [5, 2, 16, 'UN'],
  [19, 64, 36, undefined],
  [1, 2, 27, undefined],
  [5, 2, 18, undefined],
] as const)('%d/%d with %d TPI is %s', (num, den, tpi, series) => {
  expect(threadSeries({ sizeIn: rational(num, den), tpi })).toBe(series);
});

// source: published. ASME B1.1: No. 0 is 0.060 in, each number 0.013 in more; No. 10 is 0.190 in, No. 12 0.216 in.
it.each([
  [0, 0.06, 80, 'UNF'],
  [5, 0.125, 40, 'UNC'],
  [10, 0.19, 32, 'UNF'],
  [10, 0.19, 24, 'UNC'],
  [12, 0.216, 28, 'UNF'],
] as const)('No. %d is %d in', (number, sizeIn, tpi, series) => {
  const size = numberedSizeIn(number);
  expect(size.num / size.den).toBe(sizeIn);
  expect(threadSeries({ sizeIn: size, tpi })).toBe(series);
});

// source: published, from memory. ASME B1.1 at 1 in: coarse 8, fine 12, extra fine 20; 1-14 is the special one among them.
it('names what else goes by the size', () => {
  expect(lookAlikes({ sizeIn: rational(1, 1), tpi: 14 })).toEqual([
    { tpi: 8, series: 'UNC' },
    { tpi: 12, series: 'UNF' },
    { tpi: 20, series: 'UNEF' },
  ]);
  expect(lookAlikes({ sizeIn: rational(1, 1), tpi: 12 }).map(({ tpi }) => tpi)).toEqual([8, 14, 20]);
  expect(lookAlikes({ sizeIn: rational(19, 64), tpi: 36 })).toEqual([]);
});
