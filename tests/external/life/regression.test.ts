import { describe, expect, it } from 'vitest';
import { LOG_LN2 } from '@/lib/life/edge-likelihood';
import { fitLife } from '@/lib/life/fit-life';
import type { LifeFit } from '@/lib/life/life-fit';
import type { EdgeHistory } from '@/lib/life/observation';
import { type LifePriors, normal } from '@/lib/life/priors';
import { cut, edge, FLAT, flatPriors } from '@/tests/support/edge-histories';
import fits from '../../fixtures/life/fits.json';
import published from '../../fixtures/life/published.json';

function fitted(histories: readonly EdgeHistory[], priors: LifePriors): LifeFit {
  const fit = fitLife({ kind: 'die', histories, priors });
  if (!fit.ok) throw new Error(fit.sentence);
  expect(fit.stoppedBy).toBe('converged');
  return fit;
}

/** An edge that wore out exactly at, or was still working at, so much exposure. */
function plain(index: number, time: number, worn: number, more: Partial<EdgeHistory> = {}): EdgeHistory {
  return edge(`T${index}`, { before: [cut(time)], end: worn === 1 ? 'worn' : 'in-service', ...more });
}

/**
 * survreg's figures (intercept, slopes …, ln sigma) in our terms: ln shape = −ln sigma, ln median = intercept +
 * sigma·ln ln 2 + Σ slopeᵢ·shiftᵢ. Returns mode and covariance in the order ln shape, ln median, slopes.
 */
function inOurTerms(
  coef: readonly number[],
  logSigma: number,
  variance: readonly (readonly number[])[],
  shifts: readonly number[],
) {
  const slopes = coef.slice(1);
  const sigma = Math.exp(logSigma);
  const median =
    (coef[0] ?? 0) + sigma * LOG_LN2 + slopes.reduce((sum, slope, i) => sum + slope * (shifts[i] ?? 0), 0);
  const jacobian = [
    [0, ...slopes.map(() => 0), -1],
    [1, ...slopes.map((_, i) => shifts[i] ?? 0), sigma * LOG_LN2],
    ...slopes.map((_, i) => [0, ...slopes.map((__, j) => (i === j ? 1 : 0)), 0]),
  ];
  const covariance = jacobian.map((left) =>
    jacobian.map((right) =>
      left.reduce(
        (sum, l, i) => sum + right.reduce((inner, r, j) => inner + l * r * (variance[i]?.[j] ?? 0), 0),
        0,
      ),
    ),
  );
  return { mode: [-logSigma, median, ...slopes], covariance };
}

function expectEqual(
  fit: LifeFit,
  names: readonly string[],
  reference: ReturnType<typeof inOurTerms>,
  signs: readonly number[] = [],
) {
  const sign = names.map((_, i) => signs[i] ?? 1);
  const free = fit.layout.free.length;
  const position = names.map((name) => fit.layout.free.indexOf(fit.layout.indexOf[name] ?? -1));
  names.forEach((name, i) => {
    expect(Math.abs((fit.mode[name] ?? 0) * (sign[i] ?? 1) - (reference.mode[i] ?? 0))).toBeLessThan(1e-6);
    names.forEach((_, j) => {
      const ours =
        (fit.covariance[(position[i] ?? 0) * free + (position[j] ?? 0)] ?? 0) *
        (sign[i] ?? 1) *
        (sign[j] ?? 1);
      const theirs = reference.covariance[i]?.[j] ?? Number.NaN;
      // Relative to the spreads of the two figures; survreg's own curvature is good to about 1e-7.
      const spread = Math.sqrt((reference.covariance[i]?.[i] ?? 0) * (reference.covariance[j]?.[j] ?? 0));
      expect(Math.abs(ours - theirs)).toBeLessThan(1e-5 * spread);
    });
  });
}

const SIZE = ['logShape', 'logMedian', 'sizeExponent'];
const LN_OD = Math.log(0.375);

// source: other-software. R 4.2.2, survival 3.5.3, survreg, on published data.
describe('accelerated-failure-time fits of published data', () => {
  const { entries } = published;

  it('motors at four temperatures', () => {
    const { inputs, expected } = entries['A.aft.imotor_aft_weibull'];
    const histories = inputs.data.map((row, i) =>
      plain(i, row.time, row.status, { odIn: 0.375 * Math.exp(row.x) }),
    );
    const fit = fitted(histories, flatPriors({ sizeExponent: FLAT }));
    const coef = [expected.coef['(Intercept)'], expected.coef.x];
    expectEqual(fit, SIZE, inOurTerms(coef, Math.log(expected.sigma), expected.var, [0]));
    expect(Math.abs(fit.logLik - (expected.loglik[1] ?? 0))).toBeLessThan(1e-8);
  });

  it('insulating fluid, life as a power of the voltage', () => {
    const { inputs, expected } = entries['A.aft.ifluid_aft_logV'];
    const histories = inputs.data.map((row, i) => plain(i, row.time, 1, { odIn: row.voltage }));
    const fit = fitted(histories, flatPriors({ sizeExponent: FLAT }));
    const coef = [expected.coef['(Intercept)'], expected.coef['log(voltage)']];
    expectEqual(fit, SIZE, inOurTerms(coef, Math.log(expected.sigma), expected.var, [LN_OD]));
    expect(Math.abs(fit.logLik - (expected.loglik[1] ?? 0))).toBeLessThan(1e-8);
  });

  it('two treatments; and the textbook coefficients', () => {
    const rows = [entries['A.weibull.gehan_6MP'], entries['A.weibull.gehan_control']].flatMap(
      ({ inputs }, arm) => inputs.time.map((time, i) => ({ time, status: inputs.status[i] ?? 0, arm })),
    );
    const { expected } = entries['A.aft.gehan_aft'];
    const histories = rows.map(({ time, status, arm }, i) => plain(i, time, status, { regrinds: arm }));
    const fit = fitted(histories, flatPriors({ regrind: FLAT }));
    const coef = [expected.coef['(Intercept)'], expected.coef.treatcontrol];
    expectEqual(
      fit,
      ['logShape', 'logMedian', 'regrind'],
      inOurTerms(coef, Math.log(expected.sigma), expected.var, [0]),
    );
    // source: published, from memory. Kleinbaum and Klein / Collett: coefficient 1.267, shape 1.366.
    expect(Math.abs(-(fit.mode.regrind ?? 0) - 1.267)).toBeLessThan(5e-4);
    expect(Math.abs(Math.exp(fit.mode.logShape ?? 0) - 1.366)).toBeLessThan(5e-4);
  });
});

// source: other-software. tests/fixtures/life/generate.R, R 4.2.2, survival 3.5.3.
describe('fits of generated shops', () => {
  it('five sizes and regrinds, right-censored', () => {
    const { od, regrinds, time, worn, fit: reference } = fits.sizes;
    const histories = time.map((t, i) =>
      plain(i, t, worn[i] ?? 0, { odIn: od[i] ?? 0, regrinds: regrinds[i] ?? 0 }),
    );
    const fit = fitted(histories, flatPriors({ sizeExponent: FLAT, regrind: FLAT }));
    expectEqual(
      fit,
      [...SIZE, 'regrind'],
      inOurTerms(reference.coef, -reference.logShape, reference.var, [0, 0]),
    );
    expect(Math.abs(fit.logLik - reference.logLik)).toBeLessThan(1e-6);
  });

  it('wear-outs known to a row of the log', () => {
    const { od, from, to, fit: reference } = fits.rows;
    const histories = from.map((start, i) => {
      const end = to[i];
      const during = typeof end === 'number' ? [cut(end - start)] : [];
      return edge(`T${i}`, {
        odIn: od[i] ?? 0,
        before: start > 0 ? [cut(start)] : [],
        during,
        end: typeof end === 'number' ? 'worn' : 'in-service',
      });
    });
    const fit = fitted(histories, flatPriors({ sizeExponent: FLAT }));
    expectEqual(fit, SIZE, inOurTerms(reference.coef, -reference.logShape, reference.var, [0]));
    expect(Math.abs(fit.logLik - reference.logLik)).toBeLessThan(1e-6);
  });

  it('materials: the factor is the coefficient with its sign turned', () => {
    const { material, time, worn, fit: reference } = fits.materials;
    const histories = time.map((t, i) =>
      plain(i, t, worn[i] ?? 0, { before: [cut(t, { materialId: material[i] ?? '' })] }),
    );
    const fit = fitted(histories, flatPriors());
    const names = ['logShape', 'logMedian', 'material:hard', 'material:soft'];
    const theirs = inOurTerms(reference.coef, -reference.logShape, reference.var, [0, 0]);
    expectEqual(fit, names, theirs, [1, 1, -1, -1]);
    expect(Math.abs(fit.logLik - reference.logLik)).toBeLessThan(1e-6);
  });

  it('mixed materials, dry cutting, parts, regrinds and priors: the posterior written out again in R', () => {
    const data = fits.posterior;
    const histories = data.part.map((part, i) => {
      const before = [
        cut(data.ref[i] ?? 0),
        cut(data.hard[i] ?? 0, { materialId: 'hard' }),
        cut(data.hardDry[i] ?? 0, { materialId: 'hard', dry: true }),
      ];
      const row = cut(data.row[i] ?? 0, { materialId: data.rowMaterial[i] ?? '' });
      const end = data.end[i] === 'worn' ? ('worn' as const) : ('in-service' as const);
      return edge(`T${i}`, {
        partId: part,
        odIn: data.od[i] ?? 0,
        regrinds: data.regrinds[i] ?? 0,
        before,
        during: [row],
        end,
      });
    });
    const priors = flatPriors({
      logShape: normal(Math.LN2, 0.35),
      logMedian: normal(7, 0.7),
      sizeExponent: normal(-0.3, 0.4),
      regrind: normal(Math.log(0.85), 0.2),
      dry: normal(Math.log(1.5), 0.4),
      part: normal(0, 0.3),
      materials: [{ materialId: 'hard', logFactor: normal(Math.log(2.5), 0.4) }],
    });
    const fit = fitted(histories, priors);
    const names = [
      'logShape',
      'logMedian',
      'sizeExponent',
      'regrind',
      'dry',
      'material:hard',
      'part:a',
      'part:b',
    ];
    expect(Math.abs(fit.logPosterior - data.logPosterior)).toBeLessThan(1e-8);
    const free = fit.layout.free.length;
    const position = names.map((name) => fit.layout.free.indexOf(fit.layout.indexOf[name] ?? -1));
    names.forEach((name, i) => {
      // nlm stops where a step no longer changes the value: about 1e-6 in the figures.
      expect(Math.abs((fit.mode[name] ?? 0) - (data.mode[i] ?? 0))).toBeLessThan(1e-4);
      names.forEach((_, j) => {
        const spread = Math.sqrt((data.covariance[i]?.[i] ?? 0) * (data.covariance[j]?.[j] ?? 0));
        const ours = fit.covariance[(position[i] ?? 0) * free + (position[j] ?? 0)] ?? 0;
        // optimHess differences with steps of 1e-4.
        expect(Math.abs(ours - (data.covariance[i]?.[j] ?? 0))).toBeLessThan(1e-4 * spread);
      });
    });
  });
});
