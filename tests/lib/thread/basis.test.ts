import { expect, it } from 'vitest';
import { fixedOf } from '@/lib/numeric/fixed-decimal';
import { threadBasis } from '@/lib/thread/basis';

// source: hand. 19/64 = 0.296875 is 0.2969 to four places, 5/32 = 0.15625 is 0.1563 half up; a decimal finds its series as a fraction does.
it('starts from four decimals, half up', () => {
  expect(threadBasis({ sizeIn: { num: 19, den: 64 }, tpi: 36 }).basicMajorUnits).toBe(2969);
  expect(threadBasis({ sizeIn: { num: 5, den: 32 }, tpi: 36 }).basicMajorUnits).toBe(1563);
  expect(threadBasis({ sizeIn: 0.5625, tpi: 18 })).toEqual(
    threadBasis({ sizeIn: { num: 9, den: 16 }, tpi: 18 }),
  );
});

// source: hand. What is passed in goes before the tables.
it('takes a series and an engagement of its own', () => {
  const basis = threadBasis({ sizeIn: 0.75, tpi: 16, series: 'UN', engagementIn: 0.5 });
  expect([basis.series, basis.engagement]).toEqual(['UN', fixedOf(0.5)]);
});

it('throws outside its domain', () => {
  expect(() => threadBasis({ sizeIn: 7, tpi: 8 })).toThrow('invariant broken');
});
