import { expect, it } from 'vitest';
import { checkFigures } from '@/lib/gauge/check-figures';
import type { Feature } from '@/lib/shop/calibration';

const row = (over: Partial<Feature>): Feature => ({
  ...{ feature: 'pitch diameter', unit: 'um', asFoundError: 2, asLeftError: 2 },
  ...{ lowerLimit: -5, upperLimit: 5, expandedUncertainty: 1, coverageFactor: 2 },
  ...over,
});
const fieldOf = (
  over: Partial<Feature>,
  asFound: 'in' | 'out' | 'not-taken' = 'in',
  asLeft: 'in' | 'out' = 'in',
) => {
  const checked = checkFigures(row(over), { asFound, asLeft });
  return checked.ok ? null : checked.refusal.field;
};

// source: hand. 6 lies beyond 5; 5 itself does not; -6 beyond -5; a slip of a thousand is asked about first.
it('what is said and what is written agree', () => {
  expect(fieldOf({})).toBeNull();
  expect(fieldOf({ asFoundError: 5 })).toBeNull();
  expect(fieldOf({ asFoundError: 6 })).toBe('asFoundError');
  expect(fieldOf({ asFoundError: -6 }, 'out')).toBeNull();
  expect(fieldOf({ asFoundError: 2 }, 'out')).toBe('asFoundError');
  expect(fieldOf({ asFoundError: null, asLeftError: 6 }, 'out')).toBe('asLeftError');
  expect(fieldOf({ asFoundError: 6, asLeftError: 6 }, 'out', 'out')).toBeNull();
  expect(fieldOf({ asFoundError: 6 }, 'not-taken')).toBeNull();
  expect(fieldOf({ asFoundError: 2000 }, 'out')).toBe('asFoundError');
});

it('without limits there is nothing to hold a figure against', () => {
  const none = { lowerLimit: null, upperLimit: null };
  expect(fieldOf({ ...none, asFoundError: 900 })).toBeNull();
  expect(fieldOf({ ...none, asFoundError: 2 }, 'out')).toBeNull();
});
