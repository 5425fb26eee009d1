import { expect, it } from 'vitest';
import { payloadDay } from '@/app/_shared/words/payload-day';

// source: hand. The month in words, so that 3/4 cannot be misread; what is no day is never a fault of the page.
it.each([
  ['2026-03-04', '4 Mar 2026'],
  ['2026-13-40', '2026-13-40'],
  [undefined, 'undefined'],
  [7, '7'],
])('%s reads %s', (value, words) => {
  expect(payloadDay(value)).toBe(words);
});
