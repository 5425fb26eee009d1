import { expect, it } from 'vitest';
import { survival } from '@/lib/life/weibull';
import { cycleCurves } from '@/lib/replacement/cycle-curves';
import { costRate, meanCycle } from '@/lib/replacement/weibull-age';

const lives = [
  { shape: 2, scale: 100 },
  { shape: 1.4, scale: 160 },
];
const curves = cycleCurves({
  shape: Float64Array.from(lives, ({ shape }) => shape),
  scale: Float64Array.from(lives, ({ scale }) => scale),
  incidentRate: new Float64Array(2),
});

// source: identity. Without incidents every point is the mean over the draws of the exact Weibull figures.
it('is the mean over the draws at every age', () => {
  for (const at of [10, 80, 150]) {
    const age = curves.ages[at] as number;
    const mean = (f: (life: (typeof lives)[number]) => number) =>
      lives.reduce((sum, life) => sum + f(life) / 2, 0);
    expect((curves.changes[at] as number) / mean((life) => 1 / meanCycle(life, age))).toBeCloseTo(1, 5);
    expect(curves.survival[at]).toBeCloseTo(
      mean((life) => survival(life, age)),
      12,
    );
    const rate = mean((life) => costRate(life, { plannedCost: 0, failureCost: 1 }, age));
    expect((curves.failures[at] as number) / rate).toBeCloseTo(1, 5);
  }
  const run = lives.reduce(
    (sum, life) => sum + costRate(life, { plannedCost: 1, failureCost: 1 }, Infinity) / 2,
    0,
  );
  expect(curves.runChanges / run).toBeCloseTo(1, 5);
});

// source: hand. The last point is an age that one edge in a thousand sees.
it('reaches as far as edges last', () => {
  expect(curves.survival.at(-1)).toBeLessThan(1.01e-3);
  expect(curves.survival.at(-1)).toBeGreaterThan(0.9e-3);
});
