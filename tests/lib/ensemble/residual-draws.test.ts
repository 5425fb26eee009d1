import { describe, expect, it } from 'vitest';
import type { KindDraws } from '@/lib/ensemble/kind-draws';
import { kindDrawsOf } from '@/lib/ensemble/kind-draws';
import { residualDraws } from '@/lib/ensemble/residual-draws';
import type { LifeLaw } from '@/lib/life/life-law';
import { conditionalSurvival, scaleFromMedian } from '@/lib/life/weibull';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

const COUNT = 2048;
const base = kindDrawsOf(fitted(HISTORIES), COUNT);

/** Draws in which every figure and the law are known: only the tool's own chance is left. */
function certain(shape: number, incidentRate: number, law: LifeLaw = 'weibull'): KindDraws {
  return {
    ...base,
    logLogistic: new Uint8Array(COUNT).fill(law === 'weibull' ? 0 : 1),
    shape: new Float64Array(COUNT).fill(shape),
    incidentRate: new Float64Array(COUNT).fill(incidentRate),
  };
}

// source: formula. Closed-form conditional survival, times e^(−rate·x) for the incidents. The share of draws beyond x has
// a standard error of at most √(¼/2048) = 0.011; 4 of them bound every comparison here.
describe.each([
  { shape: 0.8, age: 900 },
  { shape: 2, age: 0 },
  { shape: 2, age: 430 },
  { shape: 3.5, age: 1500 },
  { shape: 8, age: 2600 },
])('shape $shape at age $age', ({ shape, age }) => {
  it.each([1e-12, 1 / 3000])('agrees with the closed form, incident rate %d', (rate) => {
    const median = 1300;
    const logMedian = new Float64Array(COUNT).fill(Math.log(median));
    const exposure = new Float64Array(COUNT).fill(age);
    const residual = residualDraws(certain(shape, rate), { key: 'tool:x', logMedian, exposure });
    const life = { shape, scale: scaleFromMedian({ shape, median }) };
    for (const more of [20, 100, 400, 1000, 2000]) {
      const expected = conditionalSurvival(life, { age, more }) * Math.exp(-rate * more);
      const share = residual.filter((value) => value > more).length / COUNT;
      expect(Math.abs(share - expected)).toBeLessThan(4 * Math.sqrt(0.25 / COUNT));
      // Without incidents the draws are stratified: the share is right to one draw.
      if (rate < 1e-9) expect(Math.abs(share - expected)).toBeLessThan(1.01 / COUNT);
    }
  });
});

// source: formula. Log-logistic: S(t) = 1/(1 + (t/m)^b), b = √2·shape; given the age, S(age + more)/S(age). Stratified: to one draw.
describe.each([
  { shape: 0.8, age: 900 },
  { shape: 2, age: 0 },
  { shape: 2, age: 430 },
  { shape: 6, age: 2600 },
])('log-logistic, shape $shape at age $age', ({ shape, age }) => {
  it('agrees with the closed form', () => {
    const logMedian = new Float64Array(COUNT).fill(Math.log(1300));
    const exposure = new Float64Array(COUNT).fill(age);
    const residual = residualDraws(certain(shape, 1e-12, 'log-logistic'), {
      key: 'tool:x',
      ...{ logMedian, exposure },
    });
    const lasts = (t: number): number => 1 / (1 + (t / 1300) ** (Math.SQRT2 * shape));
    for (const more of [20, 100, 400, 1000, 2000]) {
      const share = residual.filter((value) => value > more).length / COUNT;
      expect(Math.abs(share - lasts(age + more) / lasts(age))).toBeLessThan(1.01 / COUNT);
    }
  });
});

// source: identity. Two tools of the same age have the same lives but not the same luck.
it('gives each key its own luck', () => {
  const logMedian = new Float64Array(COUNT).fill(7);
  const [a, b] = ['tool:a', 'tool:b'].map((key) => residualDraws(certain(2, 1e-9), { key, logMedian }));
  expect(a).not.toEqual(b);
  expect(a?.every((value) => value > 0)).toBe(true);
});
