import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Bottle, bottleStanding, pickFirst } from '@/lib/fluid/pick-first';

const TODAY = '2026-06-01';
const steel = { materialId: '316', titanium: false, duty: 'ordinary' } as const;
const bottle = (toolId: string, change: Partial<Bottle> = {}): Bottle => ({
  ...{ toolId, state: 'in-crib', levelMl: 500, expiresOnDay: '2027-06-01', openedOnDay: null },
  ...{ openedLifeDays: 365, permittedMaterialIds: 'all', chlorinated: 'no' },
  ...change,
});
const ids = (bottles: readonly Bottle[]) => pickFirst(bottles, steel, TODAY).map((one) => one.bottle.toolId);

// source: published. First expired, first out: DoDM 4140.27. The order is worked out by hand from the days.
it('first expired, first out', () => {
  const bottles = [
    bottle('NEW'),
    bottle('OLD', { expiresOnDay: '2026-07-01' }),
    bottle('OPEN', { openedOnDay: '2025-06-20' }),
    bottle('KEEPS', { expiresOnDay: null }),
  ];
  // OPEN ends on 20 June 2026, OLD on 1 July, NEW in 2027, KEEPS never.
  expect(ids(bottles)).toEqual(['OPEN', 'OLD', 'NEW', 'KEEPS']);
});

// source: hand. Same day: the open one before the closed, the emptier before the fuller, then by ID.
it('among equals the open, then the emptier, then by ID', () => {
  const open = { openedOnDay: '2026-05-01', expiresOnDay: '2026-12-01' };
  const closed = { expiresOnDay: '2026-12-01' };
  const bottles = [
    bottle('D', closed),
    bottle('C', closed),
    bottle('B', { ...open, levelMl: 90 }),
    bottle('A', open),
  ];
  expect(ids(bottles)).toEqual(['B', 'A', 'C', 'D']);
});

// source: hand. Each stands out for one reason; the fifth is past its day.
it('leaves out what is set aside, empty, not permitted or past its day, and says why', () => {
  const why = (change: Partial<Bottle>) => bottleStanding(bottle('X', change), steel, TODAY).bar?.why;
  expect(why({ state: 'quarantined' })).toBe('set-aside');
  expect(why({ levelMl: 0 })).toBe('empty');
  expect(why({ permittedMaterialIds: ['ti-2'] })).toBe('material');
  expect(why({ permittedDuties: ['oxygen'] })).toBe('duty');
  expect(why({ openedOnDay: '2025-04-01' })).toBe('over-life');
  expect(why({ levelMl: null })).toBeUndefined();
});

// source: hand. Stated for oxygen: an extension does not count.
it('counts an extension, except for oxygen', () => {
  const extended = bottle('X', {
    ...{
      expiresOnDay: '2026-05-01',
      extendedUntilDay: '2026-09-01',
      permittedDuties: ['ordinary', 'oxygen'],
    },
  });
  expect(bottleStanding(extended, steel, TODAY).bar).toBeNull();
  expect(bottleStanding(extended, { ...steel, duty: 'oxygen' }, TODAY).bar?.why).toBe('over-life');
});

// source: identity. The pick does not depend on the order in which bottles are listed.
it('does not depend on the order of the list', () => {
  const any = fc.record({
    expiresOnDay: fc.constantFrom(null, '2026-06-02', '2026-07-01', '2027-01-01'),
    openedOnDay: fc.constantFrom(null, '2025-07-01', '2026-01-01'),
    levelMl: fc.constantFrom(null, 100, 900),
  });
  fc.assert(
    fc.property(fc.array(any, { maxLength: 8 }), (changes) => {
      const bottles = changes.map((change, i) => bottle(`F-${i}`, change));
      expect(ids([...bottles].reverse())).toEqual(ids(bottles));
    }),
  );
});
