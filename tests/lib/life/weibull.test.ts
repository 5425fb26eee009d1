import { describe, expect, it } from 'vitest';
import * as weibull from '@/lib/life/weibull';
import { relativeMiss } from '@/tests/support/relative-miss';

const LIVES = [0.5, 0.8, 1, 1.5, 2, 3.4, 8, 25].flatMap((shape) =>
  [1e-3, 1, 1300, 4e6].map((scale) => ({ shape, scale })),
);

// source: identity. The definitions hold together over a table of lives.
describe.each(LIVES)('shape $shape, scale $scale', (life) => {
  const shares = [1e-9, 0.01, 0.1, 0.5, 0.9, 0.999];

  it('quantile and cdf undo each other; survival and cdf make one', () => {
    for (const p of shares) {
      const age = weibull.quantile(life, p);
      // Rounding of the age is magnified by shape in the hazard.
      expect(relativeMiss(weibull.cdf(life, age), p)).toBeLessThan(1e-13 * (1 + life.shape));
      expect(Math.abs(weibull.survival(life, age) + weibull.cdf(life, age) - 1)).toBeLessThan(1e-15);
    }
  });

  it('density is hazard times survival, and the slope of cdf', () => {
    const age = weibull.medianOf(life);
    const step = age * 1e-5;
    const slope = (weibull.cdf(life, age + step) - weibull.cdf(life, age - step)) / (2 * step);
    expect(relativeMiss(weibull.density(life, age), slope)).toBeLessThan(1e-7);
    expect(
      relativeMiss(weibull.hazard(life, age) * weibull.survival(life, age), weibull.density(life, age)),
    ).toBeLessThan(1e-15);
  });

  it('median and scale undo each other', () => {
    const median = weibull.medianOf(life);
    expect(relativeMiss(weibull.quantile(life, 0.5), median)).toBeLessThan(1e-14);
    expect(relativeMiss(weibull.scaleFromMedian({ shape: life.shape, median }), life.scale)).toBeLessThan(
      1e-14,
    );
  });

  it('conditional survival is S(age + more)/S(age), and the residual quantile undoes it', () => {
    const age = weibull.medianOf(life);
    for (const more of [0, age * 1e-9, age * 0.1, age * 2]) {
      const ratio = weibull.survival(life, age + more) / weibull.survival(life, age);
      const chance = weibull.conditionalSurvival(life, { age, more });
      expect(Math.abs(chance - ratio)).toBeLessThan(1e-13 * (1 + life.shape));
    }
    for (const at of [0, age, 20 * life.scale]) {
      for (const p of [0.1, 0.5, 0.9]) {
        const more = weibull.residualQuantile(life, { age: at, p });
        // For a very old edge of a steep life the residual underflows the age's own spacing; hence the hazard.
        const hazard = weibull.hazardBetween(life, { age: at, more });
        expect(relativeMiss(-Math.expm1(-hazard), p)).toBeLessThan(1e-12 * (1 + life.shape));
      }
    }
  });

  // source: identity. Two ways to write the same formula.
  it('draws the same remaining life from the logs', () => {
    for (const age of [0, 0.1 * life.scale, life.scale, 3 * life.scale]) {
      for (const hazard of [1e-4, 0.7, 5]) {
        const plain = weibull.residualAtHazard(life, { age, hazard });
        const gathered = (age / life.scale) ** life.shape;
        const logs = { shape: life.shape, logScale: Math.log(life.scale), age };
        const fromLogs = weibull.residualFromGathered(logs, gathered, hazard);
        // The difference (age + rest) − age of a power costs digits in proportion to age/rest.
        expect(Math.abs(fromLogs - plain)).toBeLessThan(1e-12 * (plain * (1 + life.shape) + age));
      }
    }
  });

  it('mean is the integral of survival', () => {
    let sum = 0;
    for (let i = 0; i < 40_000; i++) sum += weibull.quantile(life, (i + 0.5) / 40_000);
    // Midpoint rule; the heavy tail of shape 0.5 converges slowest.
    expect(relativeMiss(sum / 40_000, weibull.mean(life))).toBeLessThan(life.shape < 1 ? 2e-3 : 1e-4);
  });
});

// source: formula. 1 − exp(−x) to first order: plain subtraction would give 0.
it('keeps digits where almost nothing has worn, and where an edge is old', () => {
  expect(weibull.cdf({ shape: 1, scale: 1 }, 1e-25)).toBe(1e-25);
  // source: hand. Shape 1: remaining life does not depend on age.
  expect(
    relativeMiss(weibull.residualAtHazard({ shape: 1, scale: 10 }, { age: 1e9, hazard: 1e-3 }), 0.01),
  ).toBeLessThan(1e-12);
});

it('has its ends', () => {
  const life = { shape: 2, scale: 5 };
  expect(weibull.survival(life, 0)).toBe(1);
  expect(weibull.quantile(life, 0)).toBe(0);
  expect(weibull.quantile(life, 1)).toBe(Number.POSITIVE_INFINITY);
  expect(weibull.conditionalSurvival(life, { age: 3, more: 0 })).toBe(1);
  expect(weibull.residualAtHazard(life, { age: 0, hazard: 0 })).toBe(0);
});
