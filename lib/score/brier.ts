import { invariant } from '../invariant';
import type { ScoredCase } from './scored-case';

/** Share of cases that came true. Domain: at least one case. Source: hand (a count). */
export function baseRateOf(cases: readonly ScoredCase[]): number {
  invariant(cases.length > 0, 'a score needs a case');
  return cases.filter(({ outcome }) => outcome).length / cases.length;
}

/**
 * Brier score: mean of (probability − outcome)². 0 is a clairvoyant, 0.25 is always saying one half.
 * Domain: at least one case. Source: G. W. Brier, Monthly Weather Review 78 (1950).
 */
export function brierScore(cases: readonly ScoredCase[]): number {
  invariant(cases.length > 0, 'a score needs a case');
  const squares = cases.map(({ probability, outcome }) => (probability - (outcome ? 1 : 0)) ** 2);
  return squares.reduce((sum, square) => sum + square, 0) / cases.length;
}

/**
 * Skill: 1 − Brier ÷ Brier of always saying the base rate r, which is r(1 − r). Above 0: worth more than the base rate.
 * 0 where everything or nothing came true. Source: formula.
 */
export function brierSkill(cases: readonly ScoredCase[]): number {
  const rate = baseRateOf(cases);
  const plain = rate * (1 - rate);
  return plain === 0 ? 0 : 1 - brierScore(cases) / plain;
}

/**
 * Murphy's parts of the Brier score over cases that share a probability: reliability − resolution + uncertainty, exactly.
 * Source: A. H. Murphy, Journal of Applied Meteorology 12 (1973).
 */
export function brierParts(cases: readonly ScoredCase[]): {
  reliability: number;
  resolution: number;
  uncertainty: number;
} {
  const rate = baseRateOf(cases);
  const groups = new Map<number, ScoredCase[]>();
  for (const scored of cases)
    groups.set(scored.probability, [...(groups.get(scored.probability) ?? []), scored]);
  let [reliability, resolution] = [0, 0];
  for (const [probability, group] of groups) {
    const share = baseRateOf(group);
    reliability += (group.length / cases.length) * (probability - share) ** 2;
    resolution += (group.length / cases.length) * (share - rate) ** 2;
  }
  return { reliability, resolution, uncertainty: rate * (1 - rate) };
}
