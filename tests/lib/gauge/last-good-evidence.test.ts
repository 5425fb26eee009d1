import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Evidence, isAfterEvidence, lastGoodEvidence } from '@/lib/gauge/last-good-evidence';

const noon = (day: string) => Date.parse(`${day}T12:00:00Z`);
const evidence = (onDay: string, over: Partial<Evidence> = {}): Evidence => ({
  ...{ entryId: onDay, kind: 'calibration', onDay, atMs: noon(onDay) },
  ...{ asFound: 'in', asLeft: 'in', qualifies: true },
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

// source: hand. The rule: without as-found data, back to the previous certificate.
it('two certificates running without as-found data: back to how the one before left it, not further', () => {
  const silent = { asFound: 'not-taken' } as const;
  const list = [C1, { ...C2, ...silent }, evidence('2026-06-10', silent)];
  expect(found(list, '2026-09-01')).toBe('2025-11-10');
  expect(found([evidence('2026-06-10', silent)], '2026-09-01')).toBeUndefined();
  const check = evidence('2026-03-03', { kind: 'interim' });
  expect(found([...list, check], '2026-09-01'), 'a check between them is better').toBe('2026-03-03');
  const doubted = [C1, { ...C2, ...silent, qualifies: false }, evidence('2026-06-10', silent)];
  expect(found(doubted, '2026-09-01'), 'one that does not count is passed over').toBe('2025-01-10');
});

it('what showed the fault is no evidence for itself', () => {
  const showed = evidence('2026-03-03', { asFound: 'out' });
  const later = { onDay: '2026-03-03', atMs: showed.atMs + 1 };
  expect(lastGoodEvidence([C2, showed], { ...later, entryId: '2026-03-03' })?.entryId).toBe('2025-11-10');
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

// source: identity. A plain walk the other way: forward through the moments, keeping what was good last and the certificates
// since that do not say how the gauge came in; of two or more of those, the last but one.
it('agrees with a plain walk', () => {
  const one = fc.record({
    entryId: fc.uuid(),
    kind: fc.constantFrom('calibration' as const, 'interim' as const),
    onDay: fc.constantFrom('2025-01-10', '2025-03-01', '2025-03-02', '2026-02-28'),
    atMs: fc.integer({ min: 0, max: 30 }),
    asFound: fc.constantFrom('in' as const, 'out' as const, 'not-taken' as const, 'not-taken' as const),
    asLeft: fc.constantFrom('in' as const, 'in' as const, 'out' as const),
    qualifies: fc.constantFrom(true, true, false),
  });
  const before = fc.record({ onDay: fc.constantFrom('2025-03-01', '2025-12-01'), atMs: fc.nat(30) });
  const stamp = (m: { onDay: string; atMs: number }) => `${m.onDay} ${String(m.atMs).padStart(2, '0')}`;
  fc.assert(
    fc.property(fc.uniqueArray(one, { maxLength: 12, selector: stamp }), before, (list, limit) => {
      let good: string | undefined;
      let silent: string[] = [];
      for (const e of list.toSorted((a, b) => (stamp(a) < stamp(b) ? -1 : 1))) {
        if (stamp(e) >= stamp(limit) || !e.qualifies || e.asLeft === 'out') continue;
        if (e.asFound !== 'not-taken') {
          good = stamp(e);
          silent = [];
        } else if (e.kind === 'calibration') silent = [...silent, stamp(e)];
      }
      const walked = silent.at(-2) ?? good;
      const last = lastGoodEvidence(list, limit);
      expect(last && stamp(last)).toBe(walked);
      const again = lastGoodEvidence([...list].reverse(), limit);
      expect(again && stamp(again)).toBe(walked);
    }),
    { numRuns: 2000 },
  );
});
