import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  type DriftPoint,
  driftPosterior,
  driftQuantile,
  longestInterval,
  meanSlope,
  probabilityWithin,
} from '@/lib/gauge/drift';
import { drift } from '../../fixtures/gauge/gauge.json';

const point = (at: number, error: number, segment = 1, standardUncertainty = 0.5): DriftPoint => ({
  ...{ at, error, standardUncertainty, segment },
});
const limits = { lower: -5, upper: 5 };
const settings = { halfWidth: 5, slopeSd: 0.01 };

// source: other-software. Brute force in NumPy over a grid of slopes, tests/fixtures/gauge/generate.py; the grid is good to 1e-9.
it.each(drift.map((one, no) => ({ ...one, no })))('case $no agrees with brute force', (one) => {
  const points = one.points.map(({ u, ...rest }) => ({ ...rest, standardUncertainty: u }));
  const posterior = driftPosterior(points, {
    halfWidth: (one.upper - one.lower) / 2,
    slopeSd: one.priorSlopeSd,
  });
  one.at.forEach((at, i) => {
    const p = probabilityWithin(posterior, at, { lower: one.lower, upper: one.upper });
    expect(Math.abs(p - (one.inside[i] as number))).toBeLessThan(1e-8);
  });
});

// source: identity. Errors on a line, measured very well, give the line back.
it('recovers a line that is there', () => {
  const points = [0, 200, 400, 600, 800].map((at) => point(at, 0.3 + 0.004 * at, 1, 1e-4));
  const posterior = driftPosterior(points, { halfWidth: 5, slopeSd: 1 });
  expect(meanSlope(posterior)).toBeCloseTo(0.004, 6);
  expect(driftQuantile(posterior, 1000, 0.5)).toBeCloseTo(4.3, 2);
});

// source: identity. One slope across an adjustment: the level starts anew, the drift does not.
it('an adjustment moves the level and not the slope', () => {
  const points = [
    point(0, 0, 1, 1e-4),
    point(100, 1, 1, 1e-4),
    point(100, -2, 2, 1e-4),
    point(200, -1, 2, 1e-4),
  ];
  const posterior = driftPosterior(points, { halfWidth: 5, slopeSd: 1 });
  expect(meanSlope(posterior)).toBeCloseTo(0.01, 5);
  expect(driftQuantile(posterior, 300, 0.5)).toBeCloseTo(0, 1);
});

// source: identity. The quantile is the inverse of the chance to lie below.
it('quantiles invert', () => {
  const posterior = driftPosterior([point(0, 0.2), point(300, 1.1), point(600, 1.4)], settings);
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      fc.integer({ min: 0, max: 2000 }),
      (p, at) => {
        const x = driftQuantile(posterior, at, p);
        expect(probabilityWithin(posterior, at, { upper: x })).toBeCloseTo(p, 9);
      },
    ),
    { numRuns: 50 },
  );
});

// source: identity. A surer target never gives a longer interval; at its end the target is met and one day on it is not.
it('the longest interval meets its target and no more', () => {
  const posterior = driftPosterior(
    [point(0, 0.2), point(300, 1.1), point(600, 1.6), point(900, 2.9)],
    settings,
  );
  const of = (target: number) => longestInterval(posterior, { from: 900, limits, target, most: 3000 });
  const days = of(0.9);
  expect(probabilityWithin(posterior, 900 + days, limits)).toBeGreaterThanOrEqual(0.9);
  expect(probabilityWithin(posterior, 901 + days, limits)).toBeLessThan(0.9);
  expect(of(0.95)).toBeLessThanOrEqual(days);
  expect(of(0.99)).toBeLessThanOrEqual(of(0.95));
  expect(longestInterval(posterior, { from: 900, limits, target: 0.9, most: 30 })).toBe(30);
});

it('a gauge that is hardly within its limits now has no interval', () => {
  const posterior = driftPosterior([point(0, 4), point(100, 5)], settings);
  expect(longestInterval(posterior, { from: 100, limits, target: 0.95, most: 1000 })).toBe(0);
});

it('throws without points, spread or uncertainty', () => {
  expect(() => driftPosterior([], settings)).toThrow('at least 1 point');
  expect(() => driftPosterior([point(0, 0, 1, 0)], settings)).toThrow('uncertainties');
  expect(() => driftPosterior([point(0, 0)], { halfWidth: 0, slopeSd: 1 })).toThrow('above 0');
});
