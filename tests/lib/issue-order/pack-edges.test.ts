import fc from 'fast-check';
import { expect, it } from 'vitest';
import { firstFitDecreasing, packEdges } from '@/lib/issue-order/pack-edges';

// source: identity. Every item is packed once, no bin overflows, never more bins than first fit decreasing, never fewer than the total asks.
it('packs everything once and never worse than first fit decreasing', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 20 }), { maxLength: 9 }), (weights) => {
      const { bins, leastBins, exact } = packEdges(weights, 20);
      expect(bins.flat().sort((a, b) => a - b)).toEqual(weights.map((_, i) => i));
      for (const bin of bins)
        expect(bin.reduce((sum, i) => sum + (weights[i] as number), 0)).toBeLessThanOrEqual(20);
      expect(bins.length).toBeLessThanOrEqual(firstFitDecreasing(weights, 20).length);
      expect(bins.length).toBeGreaterThanOrEqual(leastBins);
      expect(exact).toBe(true);
    }),
  );
});

// source: hand. What no bin holds, and a bin that holds nothing, are mistakes of the caller.
it('refuses what cannot be packed', () => {
  expect(() => packEdges([11], 10)).toThrow(/0 to the capacity/);
  expect(() => packEdges([1], 0)).toThrow(/above 0/);
});
