import { expect, it } from 'vitest';
import { wilsonInterval } from '@/lib/score/wilson';

// source: formula. The ends of the interval solve |p − share| = z·√(p(1 − p)/n).
it.each([
  [3, 10],
  [70, 100],
  [1, 2000],
])('ends where the share is just two errors away, %d of %d', (hits, count) => {
  const { low, high } = wilsonInterval(hits, count);
  for (const p of [low, high]) {
    const errors = Math.abs(p - hits / count) / Math.sqrt((p * (1 - p)) / count);
    expect(Math.abs(errors - 1.959963984540054)).toBeLessThan(1e-9);
  }
});

it('stays within 0 and 1, and needs a case', () => {
  expect(wilsonInterval(0, 3).low).toBe(0);
  expect(wilsonInterval(3, 3).high).toBe(1);
  expect(() => wilsonInterval(0, 0)).toThrow('at least one case');
});
