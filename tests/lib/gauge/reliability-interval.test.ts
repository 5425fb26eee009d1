import fc from 'fast-check';
import { expect, it } from 'vitest';
import { observedReliability, reliabilityInterval } from '@/lib/gauge/reliability-interval';

// source: identity. Observed what was wanted: the interval stays; none ever out: the formula has nothing to say.
it('stays where it should, and knows its end', () => {
  expect(reliabilityInterval({ interval: 300, observed: 0.95, target: 0.95 })).toBe(300);
  expect(reliabilityInterval({ interval: 300, observed: 1, target: 0.95 })).toBe(Number.POSITIVE_INFINITY);
});

// source: identity. R(t) = e^(−λt): applied to its own result it comes back, and a surer target gives a shorter interval.
it('goes there and back', () => {
  const share = fc.double({ min: 0.05, max: 0.995, noNaN: true });
  fc.assert(
    fc.property(share, share, (observed, target) => {
      const next = reliabilityInterval({ interval: 300, observed, target });
      expect(reliabilityInterval({ interval: next, observed: target, target: observed })).toBeCloseTo(300, 6);
      if (target > observed) expect(next).toBeLessThanOrEqual(300);
    }),
  );
});

// source: hand. One in ten out; all out is counted as half a result good.
it('counts what was found', () => {
  expect(observedReliability({ outCount: 1, count: 10 })).toBe(0.9);
  expect(observedReliability({ outCount: 0, count: 3 })).toBe(1);
  expect(observedReliability({ outCount: 4, count: 4 })).toBe(0.125);
});

it('throws on no share at all', () => {
  expect(() => reliabilityInterval({ interval: 300, observed: 0, target: 0.9 })).toThrow('observed share');
  expect(() => reliabilityInterval({ interval: 0, observed: 0.9, target: 0.9 })).toThrow('interval above 0');
  expect(() => observedReliability({ outCount: 2, count: 1 })).toThrow('at least 1');
});
