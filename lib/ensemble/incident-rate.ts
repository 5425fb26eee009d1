import type { LifeFit } from '../life/life-fit';
import { gammaQuantile } from '../numeric/gamma';
import { stratifiedUniforms } from '../numeric/random-stream';

/** Belief about the rate of incidents per unit of exposure: gamma with this shape and rate (an exposure). */
export interface GammaBelief {
  readonly shape: number;
  readonly rate: number;
}

/**
 * Gamma belief about a rate after `events` in `exposure`: shapes and rates add up. Source: formula (conjugate gamma).
 */
export function updateRate(prior: GammaBelief, seen: { events: number; exposure: number }): GammaBelief {
  return { shape: prior.shape + seen.events, rate: prior.rate + seen.exposure };
}

/**
 * Rate of incidents (dropped, cross-threaded, chipped) of one kind, pooled over parts: the weak prior of the shop, one
 * incident in so many median lives, updated by the incidents in the log over all exposure cut.
 */
export function incidentRateOf(fit: LifeFit): GammaBelief {
  const { shape, livesPerIncident } = fit.priors.incident;
  const medianLife = Math.exp(fit.mode.logMedian as number);
  const prior = { shape, rate: shape * livesPerIncident * medianLife };
  return updateRate(prior, { events: fit.counts.incident, exposure: fit.exposure });
}

/** How many different rates there are among the draws: each the middle of an equally likely stratum. */
const STRATA = 256;

/** The rate in each draw, spread evenly over the belief and shuffled by the kind's own key. */
export function incidentRateDraws(fit: LifeFit, drawCount: number): Float64Array {
  const belief = incidentRateOf(fit);
  const strata = Math.min(STRATA, drawCount);
  const rates = Float64Array.from({ length: strata }, (_, i) => gammaQuantile(belief, (i + 0.5) / strata));
  return stratifiedUniforms(`incident-rate:${fit.kind}`, drawCount).map(
    (u) => rates[Math.floor(u * strata)] as number,
  );
}
