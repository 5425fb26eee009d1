import { expect, it } from 'vitest';
import {
  demandInLeadTime,
  fillRate,
  reorderPoint,
  reorderPointAt,
  shortPerCycle,
} from '@/lib/stock/reorder-point';

// source: published. Stevenson, Operations Management, 14th ed., Example 8 (mean 50, sd 5, risk 3 %: z 1.88, ROP 59.4).
it('mean 50, spread 5, a risk of 3 in 100', () => {
  const point = reorderPoint({ mean: 50, sd: 5 }, 0.97);
  expect(point.z).toBeCloseTo(1.88, 2);
  expect(Math.abs(point.reorderPoint - 59.4)).toBeLessThan(0.005);
  expect(Math.abs(point.safetyStock - 9.4)).toBeLessThan(0.005);
});

// source: published. Heizer and Render, Operations Management (from memory): 150 a day, sd 16, lead 5 days, sd 1, z = 1.65:
// spread 154, reorder at 1 004. And a worked page: sd 2, lead 4 days, sd 0.5: 75.10659 and 724.
it('demand and lead time both uncertain', () => {
  const demand = demandInLeadTime({ demandMean: 150, demandSd: 16, leadMean: 5, leadSd: 1 });
  expect(Math.abs(demand.sd - 154)).toBeLessThan(0.5);
  expect(Math.abs(reorderPointAt(demand, 1.65).reorderPoint - 1004)).toBeLessThan(0.5);
  const other = demandInLeadTime({ demandMean: 150, demandSd: 2, leadMean: 4, leadSd: 0.5 });
  expect(other.sd).toBeCloseTo(75.10659, 5);
  expect(Math.abs(reorderPointAt(other, 1.65).reorderPoint - 724)).toBeLessThan(0.5);
});

// source: published. Stevenson (from memory): spread 20, service 90 %: E(z) = .048, 0.96 units short a cycle.
it('units short in a cycle, and the fill rate', () => {
  const { z } = reorderPoint({ mean: 0, sd: 20 }, 0.9);
  expect(Math.abs(shortPerCycle(20, z) - 0.96)).toBeLessThan(0.02);
  // source: formula. 1 − short ÷ lot.
  expect(fillRate({ sd: 20, z, lot: 100 })).toBeCloseTo(1 - shortPerCycle(20, z) / 100, 14);
  expect(() => reorderPoint({ mean: 1, sd: 1 }, 1)).toThrow('reorderPoint');
});
