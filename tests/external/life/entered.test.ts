import { describe, expect, it } from 'vitest';
import { logRank } from '@/lib/compare/log-rank';
import { fitLife } from '@/lib/life/fit-life';
import { kaplanMeier } from '@/lib/life/kaplan-meier';
import { logPosterior } from '@/lib/life/log-posterior';
import type { EdgeHistory } from '@/lib/life/observation';
import { normal } from '@/lib/life/priors';
import { cut, edge, FLAT, flatPriors } from '@/tests/support/edge-histories';
import reference from '../../fixtures/life/entered.json';

/** As good as flat beside a hundred edges: both laws are fitted, and R's fits without a prior are the reference. */
const PRIORS = flatPriors({ logShape: normal(Math.LN2, 50), logLogisticChance: 0.5, sizeExponent: FLAT });
const { late, tailed } = reference;

function fitted(histories: readonly EdgeHistory[], priors = PRIORS) {
  const fit = fitLife({ kind: 'die', histories, priors });
  if (!fit.ok || fit.logLogistic?.model === undefined) throw new Error('both laws are fitted');
  return { fit, other: fit.logLogistic, model: fit.logLogistic.model };
}

// source: other-software. R survival::survreg(dist = "loglogistic") on the same intervals, tests/fixtures/life/entered.R;
// ln median = intercept, b = √2·shape = 1 ÷ scale. To 1e-5, which the belief of spread 50 leaves open.
it('fits log-logistic lives as survreg does', () => {
  const histories = tailed.od.map((odIn, i): EdgeHistory => {
    const [from, to] = [tailed.from[i] ?? 0, tailed.to[i] ?? null];
    const before = from === 0 ? [] : [cut(from)];
    const about = { odIn, partId: `die-${odIn}` };
    if (to === null) return edge(`T${i}`, { ...about, before });
    return edge(`T${i}`, { ...about, before, during: [cut(to - from)], end: 'worn' });
  });
  const { fit, other, model } = fitted(histories);
  const at = (name: string): number => other.theta[fit.layout.indexOf[name] ?? -1] ?? Number.NaN;
  expect(Math.abs(at('logMedian') - (tailed.coef[0] ?? 0))).toBeLessThan(1e-5);
  expect(Math.abs(at('sizeExponent') - (tailed.coef[1] ?? 0))).toBeLessThan(1e-5);
  expect(Math.abs(Math.exp(at('logShape')) * Math.SQRT2 * tailed.scale - 1)).toBeLessThan(1e-5);
  expect(Math.abs(logPosterior(model, other.theta).logLik - tailed.logLik)).toBeLessThan(1e-6);
});

describe('edges that the log followed only from some exposure on', () => {
  const histories = late.time.map((time, i): EdgeHistory => {
    const entry = late.entered[i] ?? 0;
    const end = late.worn[i] === 1 ? 'worn' : 'in-service';
    return edge(`T${i}`, { before: [cut(time)], end, ...(entry > 0 ? { entered: [cut(entry)] } : {}) });
  });
  const without = histories.map(({ entered: _, ...history }) => history);
  const priors = { ...PRIORS, sizeExponent: { form: 'fixed', value: 0 } } as const;

  // source: other-software. The likelihood divided by the survival at entry, written out a second time and maximised by nlm in R.
  it('are given their survival up to there, under both laws', () => {
    const { fit, other, model } = fitted(histories, priors);
    const found = (theta: Float64Array) => ({
      shape: Math.exp(theta[0] ?? 0),
      median: Math.exp(theta[1] ?? 0),
    });
    const weibull = found(fit.theta);
    expect(Math.abs(weibull.shape / late.weibull.shape - 1)).toBeLessThan(1e-4);
    expect(Math.abs(weibull.median / late.weibull.median - 1)).toBeLessThan(1e-4);
    expect(Math.abs(fit.logLik - late.weibull.logLik)).toBeLessThan(1e-4);
    const logLogistic = found(other.theta);
    expect(Math.abs((Math.SQRT2 * logLogistic.shape) / late.logLogistic.shape - 1)).toBeLessThan(1e-4);
    expect(Math.abs(logLogistic.median / late.logLogistic.median - 1)).toBeLessThan(1e-4);
    expect(Math.abs(logPosterior(model, other.theta).logLik - late.logLogistic.logLik)).toBeLessThan(1e-4);
  });

  // source: formula. The rows were drawn with shape 2.2 and median 1000; taken as if followed from their first end they look
  // longer-lived than they are, because those that did not last are missing.
  it('make lives look too long where that is forgotten', () => {
    const median = (rows: readonly EdgeHistory[]) => Math.exp(fitted(rows, priors).fit.theta[1] ?? 0);
    expect(Math.abs(median(histories) / 1000 - 1)).toBeLessThan(0.08);
    expect(median(without)).toBeGreaterThan(1.1 * median(histories));
  });

  const lives = late.time.map((age, i) => ({
    ...{ age, worn: late.worn[i] === 1, enteredAt: late.entered[i] ?? 0 },
    ...{ group: late.group[i], stratum: String(late.stratum[i]) },
  }));

  // source: other-software. R survival::survfit(Surv(entry, time, worn) ~ 1).
  it('count as at risk from there on: survival curve', () => {
    const steps = kaplanMeier(lives);
    const { age, atRisk, worn, survival, se } = late.steps;
    expect(steps.map((step) => [step.age, step.atRisk, step.worn])).toEqual(
      age.map((a, i) => [a, atRisk[i], worn[i]]),
    );
    steps.forEach((step, i) => {
      expect(Math.abs(step.survival - (survival[i] ?? 0))).toBeLessThan(1e-12);
      expect(Math.abs(step.standardError - (se[i] ?? 0))).toBeLessThan(1e-12);
    });
  });

  // source: other-software. Score test of R survival::coxph(Surv(entry, time, worn) ~ group), with strata and without; no ties, so
  // it is the log-rank test.
  it('count as at risk from there on: log-rank test', () => {
    const groups = (strata: boolean) =>
      [1, 2].map((id) => ({
        groupId: String(id),
        lives: lives
          .filter(({ group }) => group === id)
          .map(({ stratum, ...life }) => (strata ? { ...life, stratum } : life)),
      }));
    expect(Math.abs(logRank(groups(false)).chi2 / late.chi2 - 1)).toBeLessThan(1e-7);
    expect(Math.abs(logRank(groups(true)).chi2 / late.chi2Within - 1)).toBeLessThan(1e-7);
  });
});
