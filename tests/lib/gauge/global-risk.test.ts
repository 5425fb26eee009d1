import fc from 'fast-check';
import { expect, it } from 'vitest';
import { globalRisks } from '@/lib/gauge/global-risk';
import { global_risk } from '../../fixtures/gauge/gauge.json';

// source: other-software. SciPy QUADPACK, tests/fixtures/gauge/generate.py. Its own error is about 1e-13.
it.each(global_risk)('population $m0 ± $u0, u_m $um, limits $lower … $upper, band $w', (risk) => {
  const risks = globalRisks({
    population: { mean: risk.m0, sd: risk.u0 },
    standardUncertainty: risk.um,
    limits: { lower: risk.lower ?? undefined, upper: risk.upper ?? undefined },
    guardBand: risk.w,
  });
  expect(Math.abs(risks.consumerRisk - risk.consumerRisk)).toBeLessThan(1e-11);
  expect(Math.abs(risks.producerRisk - risk.producerRisk)).toBeLessThan(1e-11);
  expect(Math.abs(risks.conformingShare - risk.conformingShare)).toBeLessThan(1e-13);
});

// source: identity. A wider guard band accepts less bad and refuses more good; a sure measurement errs hardly at all.
it('trades one risk for the other', () => {
  const sd = fc.double({ min: 0.2, max: 3, noNaN: true });
  const um = fc.double({ min: 0.02, max: 1, noNaN: true });
  fc.assert(
    fc.property(sd, um, fc.double({ min: 0.01, max: 0.8, noNaN: true }), (u0, u, more) => {
      const risks = (guardBand: number) =>
        globalRisks({
          population: { mean: 0.2, sd: u0 },
          ...{ standardUncertainty: u, limits: { lower: -1, upper: 1 }, guardBand },
        });
      const [narrow, wide] = [risks(0), risks(more)];
      expect(wide.consumerRisk).toBeLessThanOrEqual(narrow.consumerRisk + 1e-12);
      expect(wide.producerRisk).toBeGreaterThanOrEqual(narrow.producerRisk - 1e-12);
      expect(narrow.consumerRisk).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: 60 },
  );
});

// source: identity. Where the band leaves nothing to accept, nothing bad is accepted and all good is refused.
it('a band wider than the tolerance refuses everything', () => {
  const risks = globalRisks({
    population: { mean: 0, sd: 1 },
    ...{ standardUncertainty: 0.1, limits: { lower: -1, upper: 1 }, guardBand: 1 },
  });
  expect(risks.consumerRisk).toBe(0);
  expect(risks.producerRisk).toBeCloseTo(risks.conformingShare, 12);
});

it('throws without a spread', () => {
  const risk = { standardUncertainty: 0.1, limits: { upper: 1 }, guardBand: 0 };
  expect(() => globalRisks({ ...risk, population: { mean: 0, sd: 0 } })).toThrow('above 0');
});
