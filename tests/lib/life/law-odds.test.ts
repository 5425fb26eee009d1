import { expect, it } from 'vitest';
import { lawIsRuledOut, logOddsOf } from '@/lib/life/law-odds';

// source: formula. Bayes' rule: odds 0.25/0.75 × e^(−2 − (−3)).
it('weighs belief and evidence', () => {
  const odds = (0.25 / 0.75) * (Math.exp(-2) / Math.exp(-3));
  expect(logOddsOf({ logEvidence: -2, chance: 0.25 }, { logEvidence: -3 })).toBeCloseTo(Math.log(odds), 12);
});

// source: hand. 2,048 draws cannot show a share of one in 160,000; one in a thousand is two of them.
it('rules out only what no draw would show', () => {
  expect(lawIsRuledOut(Math.log(1 / 1000))).toBe(false);
  expect(lawIsRuledOut(Math.log(1 / 170_000))).toBe(true);
});
