import { expect, it } from 'vitest';
import { idSizeText } from '@/lib/shop/id-size-text';

const size = (odNum: number, odDen: number, service: 'medium' | 'high') => ({ odNum, odDen, service });

// source: hand. Size codes: hundredths of an inch, 9/16 = 0.5625 → 56, 3/8 = 0.375 → 38 (half up).
it('names the size of what serves one tube size', () => {
  expect(idSizeText([size(3, 8, 'medium')])).toBe('38');
  expect(idSizeText([size(9, 16, 'medium'), size(9, 16, 'high')])).toBe('56');
});

it('marks what serves high pressure only', () => {
  expect(idSizeText([size(9, 16, 'high')])).toBe('56H');
});

it('names no size for what serves several, or none in particular', () => {
  expect(idSizeText([size(1, 4, 'medium'), size(3, 8, 'medium')])).toBeUndefined();
  expect(idSizeText([])).toBeUndefined();
});
