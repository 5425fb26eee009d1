import fc from 'fast-check';
import { expect, it } from 'vitest';
import { calibrationInForce } from '@/lib/gauge/calibration-in-force';
import type { Calibration } from '@/lib/shop/calibration';

const certificate = (onDay: string, byDay: boolean) => {
  const takesHold = byDay ? ({ takesHold: 'by-day' } as const) : {};
  const calibration: Calibration = { onDay, result: 'pass', dueOnDay: null, certificate: '', ...takesHold };
  return { kind: 'calibration' as const, onDay, calibration };
};
const check = { kind: 'interim' as const, onDay: '2026-06-01', calibration: null };

// source: hand. The newest of the three is that of 2026-03-02, whichever was filed last.
it('is the newest by its own day; checks are no calibrations', () => {
  const days = ['2025-03-02', '2026-03-02', '2024-03-02'];
  expect(calibrationInForce([...days.map((day) => certificate(day, true)), check])?.onDay).toBe('2026-03-02');
  expect(calibrationInForce([check])).toBeUndefined();
});

// source: hand. Entries from before the rule meant: the one filed last holds.
it('old entries hold by the order of entry, and a new one beside them by its day', () => {
  const old = [certificate('2026-03-02', false), certificate('2025-03-02', false)];
  expect(calibrationInForce(old)?.onDay).toBe('2025-03-02');
  expect(calibrationInForce([...old, certificate('2024-03-02', true)])?.onDay).toBe('2025-03-02');
  expect(calibrationInForce([...old, certificate('2025-06-02', true)])?.onDay).toBe('2025-06-02');
});

// source: identity. The latest of a set of days is no matter of their order.
it('does not depend on the order of entry', () => {
  const day = fc.integer({ min: 10, max: 28 }).map((n) => `2026-01-${n}`);
  fc.assert(
    fc.property(fc.uniqueArray(day, { minLength: 1 }), (days) => {
      const inForce = calibrationInForce(days.map((one) => certificate(one, true)));
      expect(inForce?.onDay).toBe(days.toSorted().at(-1));
    }),
  );
});
