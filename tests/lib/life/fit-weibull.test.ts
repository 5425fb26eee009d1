import { describe, expect, it } from 'vitest';
import { fitWeibull } from '@/lib/life/fit-weibull';
import { quantile } from '@/lib/life/weibull';
import { relativeMiss } from '@/tests/support/relative-miss';
import published from '../../fixtures/life/published.json';

// source: formula. Agreement with survreg is in tests/external/life; here: what must hold of any fit.
const { time, status } = published.entries['A.weibull.genfan'].inputs;
const SAMPLE = {
  wornAt: time.filter((_, i) => status[i] === 1),
  workingAt: time.filter((_, i) => status[i] === 0),
};

function fitted(sample: Parameters<typeof fitWeibull>[0]) {
  const fit = fitWeibull(sample);
  if (!fit.ok) throw new Error(fit.reason);
  return fit;
}

// source: identity. Lives in another unit: same shape, scale in that unit, log-likelihood less worn·ln factor.
it.each([1e-6, 1e5])('does not depend on the unit (times %d)', (factor) => {
  const [plain, scaled] = [1, factor].map((by) =>
    fitted({ wornAt: SAMPLE.wornAt.map((t) => t * by), workingAt: SAMPLE.workingAt.map((t) => t * by) }),
  );
  expect(relativeMiss(scaled?.shape ?? 0, plain?.shape ?? 0)).toBeLessThan(1e-10);
  expect(relativeMiss(scaled?.scale ?? 0, (plain?.scale ?? 0) * factor)).toBeLessThan(1e-10);
  expect(
    Math.abs((scaled?.logLik ?? 0) + SAMPLE.wornAt.length * Math.log(factor) - (plain?.logLik ?? 0)),
  ).toBeLessThan(1e-9);
});

// source: identity. Recovery: 20,000 evenly spread quantiles of a known life; stratified, so much nearer than chance.
it.each([0.3, 1, 2.5, 12])('recovers shape %d', (shape) => {
  const wornAt = Array.from({ length: 20_000 }, (_, i) =>
    quantile({ shape, scale: 1300 }, (i + 0.5) / 20_000),
  );
  const fit = fitted({ wornAt, workingAt: [] });
  expect(relativeMiss(fit.shape, shape)).toBeLessThan(1e-3);
  expect(relativeMiss(fit.scale, 1300)).toBeLessThan(1e-3 / shape + 1e-4);
});

// The mistake that censoring exists to avoid: lives cut short are not short lives.
it('differs plainly when working edges are left out, or counted as worn (negative control)', () => {
  const right = fitted(SAMPLE);
  const leftOut = fitted({ wornAt: SAMPLE.wornAt, workingAt: [] });
  const counted = fitted({ wornAt: [...SAMPLE.wornAt, ...SAMPLE.workingAt], workingAt: [] });
  expect(leftOut.scale).toBeLessThan(right.scale / 3);
  expect(counted.scale).toBeLessThan(right.scale / 3);
});

describe('what it refuses', () => {
  it.each([
    [{ wornAt: [], workingAt: [5, 6] }, 'nothing-worn'],
    [{ wornAt: [5, 5], workingAt: [5, 2] }, 'lives-equal'],
    [{ wornAt: [7], workingAt: [] }, 'lives-equal'],
    [{ wornAt: [0, 5], workingAt: [] }, 'age-not-positive'],
    [{ wornAt: [5], workingAt: [-1] }, 'age-not-positive'],
    [{ wornAt: [5, Number.POSITIVE_INFINITY], workingAt: [] }, 'age-not-positive'],
    [{ wornAt: [], workingAt: [], wornBetween: [{ from: 4, to: 4 }] }, 'age-not-positive'],
  ])('%j: %s', (sample, reason) => {
    expect(fitWeibull(sample)).toEqual({ ok: false, reason });
  });
});

it('takes one worn edge beside a longer one, and leaves out a life that has not begun', () => {
  const fit = fitted({ wornAt: [5], workingAt: [8] });
  expect(fit.stoppedBy).toBe('converged');
  expect(fitted({ wornAt: [5], workingAt: [8, 0, 0] })).toEqual(fit);
});
