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

// source: hand. 0.1 + 0.2 fill 0.3 to the brim, though binary figures make it a hair more; no jobs take no edge.
it('fills an edge to the brim, and takes none for nothing', () => {
  expect(packEdges([0.1, 0.2], 0.3)).toEqual({ bins: [[1, 0]], leastBins: 1, exact: true });
  expect(firstFitDecreasing([0.1, 0.7, 0.2], 1)).toHaveLength(1);
  expect(packEdges([], 10)).toEqual({ bins: [], leastBins: 0, exact: true });
});
