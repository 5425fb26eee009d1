import { invariant } from '../invariant';
import { integratePieces } from '../numeric/integrate';
import { acceptanceLimits, type Limits, type NormalBelief, normalMassWithin } from './conformity';

/** What the risks of a decision rule are asked for: all in one unit. */
export interface GlobalRiskCase {
  /** The population that is measured: how such items come in. */
  readonly population: NormalBelief;
  /** Standard uncertainty of the measurement, u_m. */
  readonly standardUncertainty: number;
  readonly limits: Limits;
  /** Guard band w; positive draws the acceptance limits in. */
  readonly guardBand: number;
}

export interface GlobalRisks {
  /** Chance that an item is out of limits and accepted. */
  readonly consumerRisk: number;
  /** Chance that an item is within limits and refused. */
  readonly producerRisk: number;
  /** Chance that an item is within limits at all. */
  readonly conformingShare: number;
}

/**
 * Global consumer's and producer's risk of a guard-banded rule: over everything that comes to be measured, how much bad is
 * accepted and how much good refused.
 *   R_C = ∫ outside P(accept | η)·g₀(η) dη      R_P = ∫ inside P(refuse | η)·g₀(η) dη
 * Symbols: η, true value; g₀, population; acceptance limits A = T drawn in by w. Domain: population sd > 0, u_m > 0, at
 * least one limit; a guard band that leaves no acceptance region refuses everything. By quadrature, about 1e-12.
 * Source: JCGM 106:2012 clause 9.5.
 */
export function globalRisks(risk: GlobalRiskCase): GlobalRisks {
  const { population, standardUncertainty: um, limits, guardBand } = risk;
  invariant(population.sd > 0 && um > 0, 'globalRisks requires standard deviations above 0');
  const accepted = acceptanceLimits(limits, guardBand);
  const { lower = -Infinity, upper = Infinity } = accepted;
  const isEmpty = lower >= upper;
  const accepts = (mean: number) => (isEmpty ? 0 : normalMassWithin({ mean, sd: um }, accepted));
  const refuses = (mean: number) => (isEmpty ? 1 : refusedMass(mean, um, accepted));
  const density = normalDensity(population);
  const breaks = sharpPlaces(population, um, limits, accepted);
  const inside = (x: number) => x >= (limits.lower ?? -Infinity) && x <= (limits.upper ?? Infinity);
  // A limit is itself a break, so each piece lies wholly inside or wholly outside.
  const middleInside = (from: number, to: number) => inside((from + to) / 2);
  let [consumerRisk, producerRisk] = [0, 0];
  for (let i = 1; i < breaks.length; i++) {
    const piece = [breaks[i - 1] as number, breaks[i] as number] as const;
    if (middleInside(...piece)) producerRisk += integratePieces((x) => refuses(x) * density(x), piece);
    else consumerRisk += integratePieces((x) => accepts(x) * density(x), piece);
  }
  return { consumerRisk, producerRisk, conformingShare: normalMassWithin(population, limits) };
}

/** What is refused on either side, each tail by itself, so that a small chance keeps its digits. */
function refusedMass(mean: number, sd: number, { lower, upper }: Limits): number {
  const below = lower === undefined ? 0 : normalMassWithin({ mean, sd }, { upper: lower });
  const above = upper === undefined ? 0 : normalMassWithin({ mean, sd }, { lower: upper });
  return below + above;
}

function normalDensity({ mean, sd }: NormalBelief): (x: number) => number {
  const scale = 1 / (sd * Math.sqrt(2 * Math.PI));
  return (x) => scale * Math.exp(-0.5 * ((x - mean) / sd) ** 2);
}

/** Half-unit steps out to where a normal figure has nothing left that counts. */
const STEPS = Array.from({ length: 37 }, (_, i) => (i - 18) / 2);

/** Breaks of the integral: through the population, and closer around the limits where acceptance turns. */
function sharpPlaces({ mean, sd }: NormalBelief, um: number, limits: Limits, accepted: Limits): number[] {
  const [low, high] = [mean - 9 * sd, mean + 9 * sd];
  const turns = [accepted.lower, accepted.upper].filter((x) => x !== undefined);
  const places = [
    ...STEPS.map((step) => mean + step * sd),
    ...turns.flatMap((turn) => STEPS.map((step) => turn + step * um)),
    ...[limits.lower, limits.upper].filter((x) => x !== undefined),
  ];
  return [...new Set([low, high, ...places])].filter((x) => x >= low && x <= high).sort((a, b) => a - b);
}
