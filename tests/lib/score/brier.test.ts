import { describe, expect, it } from 'vitest';
import { baseRateOf, brierParts, brierScore, brierSkill } from '@/lib/score/brier';

const CASES = [0.2, 0.2, 0.2, 0.7, 0.7, 0.9, 0.9, 0.9].map((probability, i) => ({
  probability,
  outcome: i % 3 !== 0,
}));

describe('Brier score', () => {
  // source: hand. A clairvoyant scores 0, one half always scores 0.25.
  it('runs from 0 for a clairvoyant to 0.25 for one half', () => {
    expect(brierScore(CASES.map(({ outcome }) => ({ outcome, probability: outcome ? 1 : 0 })))).toBe(0);
    expect(brierScore(CASES.map(({ outcome }) => ({ outcome, probability: 0.5 })))).toBe(0.25);
  });

  // source: identity. Murphy 1973: reliability − resolution + uncertainty.
  it('is the sum of its parts', () => {
    const { reliability, resolution, uncertainty } = brierParts(CASES);
    expect(Math.abs(reliability - resolution + uncertainty - brierScore(CASES))).toBeLessThan(1e-15);
  });

  // source: identity. Always saying the base rate has no skill.
  it('has no skill at the base rate, and none to have where all went one way', () => {
    const plain = CASES.map(({ outcome }) => ({ outcome, probability: baseRateOf(CASES) }));
    expect(Math.abs(brierSkill(plain))).toBeLessThan(1e-15);
    expect(brierSkill([{ probability: 0.4, outcome: true }])).toBe(0);
  });

  it('needs a case', () => {
    expect(() => brierScore([])).toThrow('a score needs a case');
  });
});
