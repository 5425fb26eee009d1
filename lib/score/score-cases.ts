import { baseRateOf, brierScore, brierSkill } from './brier';
import { reliabilityOf } from './reliability';
import type { Score, ScoredCase } from './scored-case';

/** Every score of a set of settled cases; undefined without any. */
export function scoreCases(cases: readonly ScoredCase[]): Score | undefined {
  if (cases.length === 0) return undefined;
  return {
    count: cases.length,
    baseRate: baseRateOf(cases),
    brier: brierScore(cases),
    skill: brierSkill(cases),
    reliability: reliabilityOf(cases),
  };
}
