import { expect, it } from 'vitest';
import { endsAtStake } from '@/lib/gauge/ends-at-stake';

const noon = (onDay: string) => ({ onDay, atMs: Date.parse(`${onDay}T12:00:00Z`) });
const passed = (onDay: string) => ({
  ...{ ...noon(onDay), entryId: onDay, kind: 'interim' as const },
  ...{ asFound: 'in' as const, asLeft: 'in' as const, qualifies: true },
});
const accepted = [
  { ...noon('2026-01-05'), ends: 10 },
  { ...noon('2026-02-05'), ends: 20 },
  { ...noon('2026-03-01'), ends: 40 },
];

// source: hand. 20 and 40 lie after the check of 1 February; with no evidence all 70 count.
it('counts what was accepted since it was last known good', () => {
  const now = noon('2026-03-02');
  expect(endsAtStake([passed('2026-02-01')], accepted, now)).toEqual({ ends: 60, sinceDay: '2026-02-01' });
  expect(endsAtStake([], accepted, now)).toEqual({ ends: 70, sinceDay: null });
});
