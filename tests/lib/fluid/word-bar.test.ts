import { expect, it } from 'vitest';
import { type Bottle, bottleStanding } from '@/lib/fluid/pick-first';
import { wordBar } from '@/lib/fluid/word-bar';

const TODAY = '2026-03-02';
const steel = { materialId: '316', titanium: false, duty: 'ordinary' } as const;
const say = (change: Partial<Bottle>, work: Parameters<typeof wordBar>[1] = steel) => {
  const bottle: Bottle = {
    ...{ toolId: 'F-L03', state: 'in-crib', levelMl: 500, expiresOnDay: '2027-06-01', openedOnDay: null },
    ...{ openedLifeDays: 365, permittedMaterialIds: 'all', chlorinated: 'yes' },
    ...change,
  };
  return wordBar(bottleStanding(bottle, work, TODAY), work, TODAY);
};

// source: hand. Opened on 1 January 2025, 425 days before: 13.97 months, 14 at the next day but one.
it('says how long it was open and how long it keeps', () => {
  expect(say({ openedOnDay: '2024-12-30' })).toBe(
    'F-L03 was opened 14 months ago and keeps 12 months: its day was 30 Dec 2025.',
  );
  expect(say({ expiresOnDay: '2026-03-01' })).toBe('F-L03 is past its shelf life: its day was 1 Mar 2026.');
});

// source: hand. One sentence for each bar; none where there is no bar.
it('says why it is barred', () => {
  expect(say({})).toBeNull();
  expect(say({ state: 'quarantined' })).toBe('F-L03 is set aside.');
  expect(say({ levelMl: 0 })).toBe('F-L03 is empty.');
  expect(say({ permittedMaterialIds: [] })).toBe('F-L03 is not permitted on this material.');
  expect(say({}, { ...steel, titanium: true })).toBe('F-L03 is chlorinated: not on titanium.');
  expect(say({ chlorinated: 'unknown' }, { ...steel, titanium: true })).toContain(
    'until the supplier has answered',
  );
  expect(say({}, { ...steel, duty: 'oxygen' })).toBe('F-L03 is not flagged for oxygen service.');
});
