import { describe, expect, it } from 'vitest';
import { brierScore } from '@/lib/score/brier';
import { type ReachCase, reachCases } from '@/tests/support/reach-study';

const SHOPS = 12;
const STUDY = {
  law: 'weibull',
  truth: 'as-believed',
  shops: SHOPS,
  jobs: 20,
  warmUpRows: 0,
  readingShare: 0.6,
} as const;
const TIMEOUT = { timeout: 300_000 };

/** Mean over the cases of what we said less what was true of it, and its standard error with the shops as the sample. */
function meanGap(cases: readonly ReachCase[]): { mean: number; error: number } {
  const size = Math.ceil(cases.length / SHOPS);
  const means = Array.from({ length: SHOPS }, (_, s) => {
    const mine = cases.slice(s * size, (s + 1) * size);
    return (
      mine.reduce((sum, { ours, knowing }) => sum + ours.probability - knowing.probability, 0) / mine.length
    );
  });
  const mean = means.reduce((sum, value) => sum + value, 0) / SHOPS;
  const squares = means.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, error: Math.sqrt(squares / (SHOPS - 1) / SHOPS) };
}

// source: formula. Truths drawn from the priors, logs replayed row by row: over such shops an exact posterior is right on
// average, so the mean gap to a forecaster who knows the truth is nought within its error (3.3 of them).
describe('predictions for shops whose truth is known', () => {
  it('are right on average, better than the fixed count, and better still with readings', TIMEOUT, () => {
    const without = reachCases({ ...STUDY, useReadings: false });
    const { mean, error } = meanGap(without);
    expect(error).toBeLessThan(0.05);
    expect(Math.abs(mean)).toBeLessThan(3.3 * error);
    const ours = brierScore(without.map((one) => one.ours));
    expect(ours).toBeLessThan(brierScore(without.map((one) => one.fixedCount)));
    const read = reachCases({ ...STUDY, useReadings: true });
    expect(read.map(({ ours: { outcome } }) => outcome)).toEqual(
      without.map(({ ours: { outcome } }) => outcome),
    );
    expect(brierScore(read.map((one) => one.ours))).toBeLessThan(ours);
  });
});
