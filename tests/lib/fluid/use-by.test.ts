import { expect, it } from 'vitest';
import { bottleUseBy, isOverLife } from '@/lib/fluid/use-by';

const days = { expiresOnDay: '2027-06-30', openedOnDay: null, openedLifeDays: 365 };

// source: hand. Opened on 1 March 2026 it keeps 365 days, to 1 March 2027; the shelf says June.
it('the earlier of shelf life and opened life ends it', () => {
  expect(bottleUseBy(days)).toEqual({ onDay: '2027-06-30', by: 'shelf life' });
  expect(bottleUseBy({ ...days, openedOnDay: '2026-03-01' })).toEqual({
    onDay: '2027-03-01',
    by: 'opened life',
  });
  expect(bottleUseBy({ ...days, openedOnDay: '2026-12-01' })).toEqual({
    onDay: '2027-06-30',
    by: 'shelf life',
  });
  expect(bottleUseBy({ expiresOnDay: null, openedOnDay: null, openedLifeDays: 365 })).toEqual({
    onDay: null,
    by: null,
  });
  expect(
    bottleUseBy({ expiresOnDay: null, openedOnDay: '2026-03-01', openedLifeDays: null }).onDay,
  ).toBeNull();
});

// source: published. DoDM 4140.27: Type II may be extended after inspection; oxygen work goes by the label (stated).
it('an extension counts, but not as labelled, and never shortens', () => {
  const extended = { ...days, extendedUntilDay: '2027-09-30' };
  expect(bottleUseBy(extended)).toEqual({ onDay: '2027-09-30', by: 'extension' });
  expect(bottleUseBy(extended, { asLabelled: true })).toEqual({ onDay: '2027-06-30', by: 'shelf life' });
  expect(bottleUseBy({ ...days, extendedUntilDay: '2026-01-01' }).by).toBe('shelf life');
});

// source: hand. Good to the end of the day, as every due day of the shop.
it('usable to the end of its day', () => {
  const end = { onDay: '2027-06-30', by: 'shelf life' } as const;
  expect(isOverLife(end, '2027-06-30')).toBe(false);
  expect(isOverLife(end, '2027-07-01')).toBe(true);
  expect(isOverLife({ onDay: null, by: null }, '2099-01-01')).toBe(false);
});
