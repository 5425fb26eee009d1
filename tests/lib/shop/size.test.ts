import { expect, it } from 'vitest';
import { compareSizes, orderSizes, sizeCode, sizeKey, sizeLabel } from '@/lib/shop/size';
import { rational } from '@/lib/units/rational';

// source: hand. Hundredths of an inch: 25, 37.5 → 38, 56.25 → 56, 75, 100, 31.25 → 31, 6.25 → 06, 12.5 → 13, 150.
it.each([
  [1, 4, '25'],
  [3, 8, '38'],
  [9, 16, '56'],
  [3, 4, '75'],
  [1, 1, '100'],
  [5, 16, '31'],
  [1, 16, '06'],
  [1, 8, '13'],
  [3, 2, '150'],
])('sizeCode of %d/%d is %s', (num, den, code) => {
  expect(sizeCode(rational(num, den))).toBe(code);
});

// source: hand. 18/32 is 9/16 and must share its key.
it('the same size has the same key however it was written', () => {
  expect(sizeKey(rational(18, 32))).toBe('9/16');
  expect(sizeLabel(rational(18, 32))).toBe('9⁄16');
});

// source: hand. 1/4 < 3/8 < 9/16 < 1; 2/8 is 1/4 again.
it('orders sizes by value, each once, and leaves its input alone', () => {
  const sizes = Object.freeze([
    rational(1, 1),
    rational(9, 16),
    rational(1, 4),
    rational(3, 8),
    rational(2, 8),
  ]);
  expect(orderSizes(sizes).map(sizeKey)).toEqual(['1/4', '3/8', '9/16', '1']);
  expect(compareSizes(rational(9, 16), rational(3, 8))).toBe(1);
});
