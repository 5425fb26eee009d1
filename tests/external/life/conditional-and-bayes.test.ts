import { describe, expect, it } from 'vitest';
import { updateRate } from '@/lib/ensemble/incident-rate';
import { conditionalSurvival, quantile, residualQuantile, survival } from '@/lib/life/weibull';
import { gammaQ, gammaQuantile } from '@/lib/numeric/gamma';
import { relativeMiss } from '@/tests/support/relative-miss';
import published from '../../fixtures/life/published.json';

const { entries } = published;

describe('conditional life', () => {
  // source: published. ReliaWiki, Weibull conditional reliability (formula); figures computed from it.
  it.each(entries['B.conditional.formula'].expected)(
    'R($t | $T) for shape $beta',
    ({ beta, eta, T, t, R }) => {
      expect(
        relativeMiss(conditionalSurvival({ shape: beta, scale: eta }, { age: T, more: t }), R),
      ).toBeLessThan(1e-13);
    },
  );

  // source: published. Nelson, Applied Life Data Analysis, pp. 69-70: windings, mean residual life 7.1 at age 6.5.
  it('windings: survival, median age and mean residual life', () => {
    const { inputs, expected, computed } = entries['B.nelson.windings'];
    const life = { shape: inputs.beta, scale: inputs.eta };
    expect(
      relativeMiss(conditionalSurvival(life, { age: 6.5, more: 6.5 }), computed.R_13_given_6p5),
    ).toBeLessThan(1e-13);
    expect(
      relativeMiss(6.5 + residualQuantile(life, { age: 6.5, p: 0.5 }), computed.cond_median_age),
    ).toBeLessThan(1e-13);
    // Mean residual life as the mean of the quantile over 20,000 even shares (midpoint rule).
    let sum = 0;
    for (let i = 0; i < 20_000; i++) sum += residualQuantile(life, { age: 6.5, p: (i + 0.5) / 20_000 });
    expect(Math.abs(sum / 20_000 - expected.mean_residual_life)).toBeLessThan(0.05);
    expect(Math.abs(sum / 20_000 - computed.mean_residual_life)).toBeLessThan(0.001);
  });

  // source: other-software. B10 factors computed in SciPy; formula eta·(−ln 0.9)^(1/beta).
  it.each(Object.entries(entries['B.B10.factor'].expected))('B10 of shape %s', (shape, factor) => {
    expect(relativeMiss(quantile({ shape: Number(shape), scale: 1 }, 0.1), factor)).toBeLessThan(1e-13);
  });

  // source: published. Scale over L10 for the slope 1.5 used by ISO 281: 4.4828 (half a unit of the printed digits).
  it('scale over L10 at slope 1.5', () => {
    expect(
      Math.abs(1 / quantile({ shape: 1.5, scale: 1 }, 0.1) - entries['B.iso281'].expected.ratio),
    ).toBeLessThan(5e-5);
  });
});

describe('conjugate gamma belief about a rate', () => {
  // source: published, from memory. NIST/SEMATECH e-Handbook 8.4.6: prior (2, 1400), 2 failures in 1909 h.
  it('NIST example: posterior, median, bounds', () => {
    const { inputs, expected } = entries['C.nist.bayes'];
    const belief = updateRate({ shape: inputs.a, rate: inputs.b }, { events: inputs.r, exposure: inputs.T });
    expect(belief).toEqual({ shape: expected.post_a, rate: expected.post_b });
    expect(Math.abs(1 / gammaQuantile(belief, 0.5) - expected.median)).toBeLessThan(1);
    expect(Math.abs(1 / gammaQuantile(belief, 0.8) - expected.lower80)).toBeLessThan(1);
    expect(Math.abs(1 / gammaQuantile(belief, 0.1) - expected.upper90)).toBeLessThan(1);
    expect(Math.abs(1 - gammaQ(belief.shape, belief.rate / 600) - expected.P_MTBF_gt_600)).toBeLessThan(
      0.001,
    );
  });

  // source: other-software. SciPy, gamma(2, rate 5000) prior, 3 events in 7000.
  it('posterior quantiles and predictive survival', () => {
    const { inputs, expected } = entries['C.gamma.conj'];
    const [shape = 0, rate = 0] = inputs.prior;
    const belief = updateRate({ shape, rate }, { events: inputs.r, exposure: inputs.TTT });
    [0.05, 0.5, 0.95].forEach((p, i) => {
      expect(relativeMiss(gammaQuantile(belief, p), expected.q[i] ?? Number.NaN)).toBeLessThan(1e-10);
    });
    expect(relativeMiss((belief.rate / (belief.rate + 100)) ** belief.shape, expected.predR100)).toBeLessThan(
      1e-10,
    );
  });

  // source: published. "reliability" (Python) documentation, test planner examples 1 and 2: 2T/chi2(conf, 2r + 2).
  it('lower bounds of mean life from a test', () => {
    const { inputs, expected } = entries['C.mtbf.bound'];
    inputs.forEach(({ T, r, CI, sided }, i) => {
      const confidence = sided === 2 ? 1 - (1 - CI) / 2 : CI;
      expect(
        relativeMiss(T / gammaQuantile({ shape: r + 1, rate: 1 }, confidence), expected[i] ?? Number.NaN),
      ).toBeLessThan(1e-12);
    });
  });

  // source: other-software. SciPy: known shape 2, scale^−2 ~ gamma(1 + 10, Σ t²) on the NIST units.
  it('known shape: scale quantiles and predictive survival', () => {
    const { expected } = entries['C.weib_known_2.0'];
    const { inputs } = entries['A.weibull.nist20'];
    const powers = inputs.time.reduce((sum, t) => sum + t ** expected.beta, 0);
    const belief = updateRate({ shape: 1, rate: 0 }, { events: expected.r, exposure: powers });
    const scaleAt = (p: number): number => gammaQuantile(belief, 1 - p) ** (-1 / expected.beta);
    [0.05, 0.5, 0.95].forEach((p, i) => {
      expect(relativeMiss(scaleAt(p), expected.eta_q05_50_95[i] ?? Number.NaN)).toBeLessThan(1e-10);
    });
    expect(relativeMiss((1 + 100 ** 2 / belief.rate) ** -belief.shape, expected.pred_R100)).toBeLessThan(
      1e-10,
    );
  });

  // source: other-software. SciPy: nothing worn among n tested to T, shape known.
  it.each([
    { n: 5, T: 1000, b: 2, C: 0.9, entry: entries['C.weibayes0_n=5_T=1000_b=2_C=0.9000'] },
    { n: 14, T: 1500, b: 3, C: 0.9, entry: entries['C.weibayes0_n=14_T=1500_b=3_C=0.9000'] },
  ])('nothing worn among $n: lower bounds', ({ n, T, b, C, entry }) => {
    const scale = gammaQuantile({ shape: 1, rate: n * T ** b }, C) ** (-1 / b);
    expect(relativeMiss(scale, entry.expected.eta_lb)).toBeLessThan(1e-10);
    expect(relativeMiss(quantile({ shape: b, scale }, 0.1), entry.expected.B10_lb)).toBeLessThan(1e-10);
    expect(relativeMiss(survival({ shape: b, scale }, 1000), entry.expected.R1000_lb)).toBeLessThan(1e-10);
  });
});
