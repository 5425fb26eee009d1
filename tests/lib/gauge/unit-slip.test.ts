import { expect, it } from 'vitest';
import { checkUnitSlip, halfWidthOf } from '@/lib/gauge/unit-slip';
import type { Feature } from '@/lib/shop/calibration';

const row = (over: Partial<Feature>): Feature => ({
  ...{ feature: 'pitch diameter', unit: 'mm', asFoundError: 0.002, asLeftError: null },
  ...{ lowerLimit: -0.005, upperLimit: 0.005, expandedUncertainty: 0.001, coverageFactor: 2 },
  ...over,
});
const fieldOf = (over: Partial<Feature>) => {
  const checked = checkUnitSlip(row(over));
  return checked.ok ? null : checked.refusal.field;
};

// source: hand. 2 µm typed as 2 mm is 1000 times off; 0.0001 in typed as 0.1 (mils) is 1000 off; both far beyond the limits.
it.each([
  [{}, null],
  [{ asFoundError: 0.009 }, null],
  [{ asFoundError: 2 }, 'asFoundError'],
  [{ asFoundError: null, asLeftError: -2 }, 'asLeftError'],
  [{ expandedUncertainty: 1 }, 'expandedUncertainty'],
  [{ expandedUncertainty: 0.000001 }, 'expandedUncertainty'],
  [{ expandedUncertainty: null }, null],
  [{ unit: 'in', asFoundError: 3, lowerLimit: -0.0002, upperLimit: 0.0002 }, 'asFoundError'],
  [{ lowerLimit: null, upperLimit: null, asFoundError: 900 }, null],
] as const)('%o: %s', (over, field) => {
  expect(fieldOf(over)).toBe(field);
});

// source: hand.
it('the width of a tolerance with one limit is its distance from no error', () => {
  expect(halfWidthOf({ lowerLimit: null, upperLimit: 3 })).toBe(3);
  expect(halfWidthOf({ lowerLimit: -3, upperLimit: 5 })).toBe(4);
  expect(halfWidthOf({ lowerLimit: null, upperLimit: 0 })).toBeNull();
  expect(halfWidthOf({ lowerLimit: null, upperLimit: null })).toBeNull();
});
