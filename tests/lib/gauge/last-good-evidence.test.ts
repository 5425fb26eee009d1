import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  type Evidence,
  isAfterEvidence,
  isGoodEvidence,
  lastGoodEvidence,
} from '@/lib/gauge/last-good-evidence';

const noon = (day: string) => Date.parse(`${day}T12:00:00Z`);
const evidence = (onDay: string, over: Partial<Evidence> = {}): Evidence => ({
  ...{ entryId: onDay, onDay, atMs: noon(onDay), asFound: 'in', asLeft: 'in', qualifies: true },
  ...over,
});
const found = (days: Evidence[], onDay: string) =>
  lastGoodEvidence(days, { onDay, atMs: noon(onDay) })?.entryId;

const C1 = evidence('2025-01-10');
const C2 = evidence('2025-11-10');

// source: common practice, no source. ISO 9001 7.1.5.2: back to when the gauge was last known good.
it('is the last as-found-good calibration before it was found out', () => {
  expect(found([C1, C2, evidence('2026-09-01', { asFound: 'out' })], '2026-09-01')).toBe('2025-11-10');
});

it('is a documented check where that came later, and not one that does not count', () => {
  const check = evidence('2026-05-05');
  expect(found([C1, C2, check], '2026-09-01')).toBe('2026-05-05');
  expect(found([C1, C2, { ...check, qualifies: false }], '2026-09-01')).toBe('2025-11-10');
});

it('without as-found data goes back to the certificate before', () => {
  expect(found([C1, { ...C2, asFound: 'not-taken' }], '2026-09-01')).toBe('2025-01-10');
});

it('found out and adjusted, it is good from then on; failed, it is not', () => {
  expect(found([C1, { ...C2, asFound: 'out', asLeft: 'in' }], '2026-09-01')).toBe('2025-11-10');
  expect(found([C1, { ...C2, asFound: 'out', asLeft: 'out' }], '2026-09-01')).toBe('2025-01-10');
});

it('what is found later is no evidence for earlier, and with none at all the window has no beginning', () => {
  expect(found([C1, C2], '2025-06-01')).toBe('2025-01-10');
  expect(found([C2], '2025-06-01')).toBeUndefined();
  expect(isAfterEvidence({ onDay: '1999-01-01', atMs: 0 }, undefined)).toBe(true);
});

it('an ending on the same day is split by the clock', () => {
  const at = (ms: number) => isAfterEvidence({ onDay: C1.onDay, atMs: C1.atMs + ms }, C1);
  expect([at(-1), at(0), at(1)]).toEqual([false, false, true]);
});

it('evidence entered days later has no hour: its whole day lies inside the window', () => {
  const late = { ...C1, atMs: noon('2025-01-20') };
  expect(isAfterEvidence({ onDay: '2025-01-10', atMs: noon('2025-01-10') }, late)).toBe(true);
  expect(isAfterEvidence({ onDay: '2025-01-09', atMs: noon('2025-01-09') }, late)).toBe(false);
  expect(isAfterEvidence({ onDay: '2025-01-11', atMs: noon('2025-01-11') }, late)).toBe(true);
});

// source: identity. A plain walk: sort what is good by moment, take the last before; the order of entry does not matter.
it('agrees with a plain walk', () => {
  const one = fc.record({
    entryId: fc.uuid(),
    onDay: fc.constantFrom('2025-01-10', '2025-03-01', '2025-03-02', '2026-02-28'),
    atMs: fc.integer({ min: 0, max: 5 }),
    asFound: fc.constantFrom('in' as const, 'out' as const, 'not-taken' as const),
    asLeft: fc.constantFrom('in' as const, 'out' as const),
    qualifies: fc.boolean(),
  });
  const before = fc.record({ onDay: fc.constantFrom('2025-03-01', '2025-12-01'), atMs: fc.nat(5) });
  const stamp = (m: { onDay: string; atMs: number }) => `${m.onDay} ${m.atMs}`;
  fc.assert(
    fc.property(fc.array(one, { maxLength: 12 }), before, (list, limit) => {
      const walked = list
        .filter((e) => isGoodEvidence(e) && stamp(e) < stamp(limit))
        .map(stamp)
        .sort()
        .at(-1);
      const last = lastGoodEvidence(list, limit);
      expect(last && stamp(last)).toBe(walked);
      const again = lastGoodEvidence([...list].reverse(), limit);
      expect(again && stamp(again)).toBe(walked);
    }),
  );
});
