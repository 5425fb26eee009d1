import { invariant } from '../invariant';
import { studentTCdf, studentTQuantile } from '../numeric/student-t';
import { compensatedSum } from '../numeric/sum';

/**
 * What is believed of a supplier's delays, ln(achieved ÷ quoted), normal with mean μ and variance σ² both unknown:
 * σ² ~ inverse gamma(shape, rate), μ | σ² ~ N(mean, σ² ÷ weight). Normal-inverse-gamma, conjugate.
 */
export interface LeadTimeBelief {
  readonly mean: number;
  /** How many orders the mean is worth. */
  readonly weight: number;
  readonly shape: number;
  readonly rate: number;
  /** Orders that it was learnt from. */
  readonly orders: number;
}

/**
 * Before the first receipt: the median is what was quoted, nine orders in ten take at most about half as long again
 * (10–90 %: quote ÷ 1.5 … quote × 1.5), worth two orders. Common practice, no source.
 */
export const LEAD_TIME_PRIOR: LeadTimeBelief = leadTimePrior({ giveOrTake: 1.5, worthOrders: 2 });

/**
 * A belief in shop words: "as quoted, give or take a factor of 1.5" (the 10–90 % band of the next order), worth so many
 * orders. Shape 2 throughout. Domain: giveOrTake > 1, worthOrders > 0. Source: formula, the predictive t with 4 degrees
 * of freedom has its 90 % point at ln giveOrTake.
 */
export function leadTimePrior(belief: { giveOrTake: number; worthOrders: number }): LeadTimeBelief {
  const { giveOrTake, worthOrders: weight } = belief;
  invariant(giveOrTake > 1 && weight > 0, 'leadTimePrior requires a factor above 1 and a weight above 0');
  const shape = 2;
  const scale = Math.log(giveOrTake) / studentTQuantile(0.9, 2 * shape);
  return { mean: 0, weight, shape, rate: (scale * scale * shape * weight) / (weight + 1), orders: 0 };
}

/**
 * The belief after so many delays were seen. Source: formula (conjugate update): weight′ = weight + n,
 * mean′ = (weight·mean + Σx)/weight′, shape′ = shape + n/2,
 * rate′ = rate + Σ(x − x̄)²/2 + weight·n·(x̄ − mean)²/(2·weight′).
 */
export function learnLeadTime(prior: LeadTimeBelief, logDelays: readonly number[]): LeadTimeBelief {
  const n = logDelays.length;
  if (n === 0) return prior;
  const average = compensatedSum(logDelays) / n;
  const scatter = compensatedSum(logDelays.map((delay) => (delay - average) ** 2));
  const weight = prior.weight + n;
  return {
    mean: (prior.weight * prior.mean + n * average) / weight,
    weight,
    shape: prior.shape + n / 2,
    rate: prior.rate + scatter / 2 + (prior.weight * n * (average - prior.mean) ** 2) / (2 * weight),
    orders: prior.orders + n,
  };
}

/** The next order's ln(achieved ÷ quoted): Student's t about `centre`, stretched by `scale`. Source: formula. */
export function nextDelay({ mean, weight, shape, rate }: LeadTimeBelief): {
  readonly centre: number;
  readonly scale: number;
  readonly dof: number;
} {
  return { centre: mean, scale: Math.sqrt((rate * (weight + 1)) / (shape * weight)), dof: 2 * shape };
}

/** Days until all of an order is there, which it keeps within with probability p. Domain: quotedDays > 0, 0 < p < 1. */
export function leadDaysWithin(belief: LeadTimeBelief, quotedDays: number, p: number): number {
  invariant(quotedDays > 0, 'leadDaysWithin requires quoted days above 0');
  const { centre, scale, dof } = nextDelay(belief);
  return quotedDays * Math.exp(centre + scale * studentTQuantile(p, dof));
}

/** Probability that an order quoted for so many days takes at most `days`. Domain: quotedDays > 0. */
export function probabilityWithin(belief: LeadTimeBelief, quotedDays: number, days: number): number {
  invariant(quotedDays > 0, 'probabilityWithin requires quoted days above 0');
  if (days <= 0) return 0;
  const { centre, scale, dof } = nextDelay(belief);
  return studentTCdf((Math.log(days / quotedDays) - centre) / scale, dof);
}
