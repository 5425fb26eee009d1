import { expect, it } from 'vitest';
import { decideCheck, hasDayCome, type Master } from '@/lib/gauge/decide-check';
import { sentence } from '../../support/db';

const ring = { id: 'G-56-GO-1', role: 'go-ring', fitsConnectionIds: ['9-16-high'] } as const;
const plug: Master = {
  ...{ id: 'SP-56-1', role: 'setting-plug', fitsConnectionIds: ['9-16-high'] },
  ...{ state: 'in-crib', dueOnDay: '2026-12-31' },
};
const check = { onDay: '2026-03-02', qualifies: true, againstToolId: 'SP-56-1' };

it('a check on a master in date counts', () => {
  expect(decideCheck(ring, check, plug).ok).toBe(true);
  expect(decideCheck(ring, { ...check, onDay: '2026-12-31' }, plug).ok).toBe(true);
});

it('one that counts names a master that is good itself', () => {
  const said = [
    decideCheck(ring, { ...check, againstToolId: null }, undefined),
    decideCheck(ring, check, undefined),
    decideCheck(ring, check, { ...plug, fitsConnectionIds: ['3-8-high'] }),
    decideCheck(ring, check, { ...plug, state: 'quarantined' }),
    decideCheck(ring, check, { ...plug, dueOnDay: '2026-03-01' }),
    decideCheck(ring, check, { ...plug, dueOnDay: null }),
  ].map(sentence);
  expect(said).toEqual([
    'Name the master it was checked on, or say that the check does not count.',
    'No tool SP-56-1 is in the record.',
    'G-56-GO-1 cannot be checked on SP-56-1: another kind or another size.',
    'SP-56-1 is quarantined; a check on it does not count.',
    'SP-56-1 was out of date itself; a check on it does not count.',
    'SP-56-1 was out of date itself; a check on it does not count.',
  ]);
});

it('one that does not count may be written down as it was made', () => {
  expect(decideCheck(ring, { ...check, qualifies: false, againstToolId: null }, undefined).ok).toBe(true);
  expect(decideCheck(ring, { ...check, qualifies: false }, { ...plug, dueOnDay: '2026-01-01' }).ok).toBe(
    true,
  );
});

// source: hand. 2026-03-02 08:00 UTC: the 2nd everywhere, the 3rd nowhere yet; 11:00 UTC the 3rd has begun at UTC+14.
it('a day has come when it has begun somewhere', () => {
  const at = (hour: number) => Date.UTC(2026, 2, 2, hour);
  expect([hasDayCome('2026-03-02', at(8)), hasDayCome('2026-03-03', at(8))]).toEqual([true, false]);
  expect(hasDayCome('2026-03-03', at(11))).toBe(true);
});
