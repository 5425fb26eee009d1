import type { KindDraws } from '../ensemble/kind-draws';
import type { Band } from '../ensemble/reasons';
import { invariant } from '../invariant';
import type { GroupEffect } from './comparison';
import { type GroupedEdge, groupedDraws, groupedLogLik } from './grouped-edge';

/** Belief about a group's effect on the log of the life before its log speaks: none, give or take. Stated default. */
export const GROUP_EFFECT_SD = 0.3;

/** Points of the grid over the effect, and how many spreads of the belief it reaches to either side. */
const POINTS = 61;
const REACH = 4;

/**
 * How long a group's edges last against the rest: the effect δ on the log life has a normal belief of mean 0, and
 * p(δ | log) ∝ p(δ)·Σₖ Π L(edge | θₖ, δ), θₖ the futures of a fit to the *other* edges: each future counts by how well it
 * explains the group, so what the rest leaves open is not laid at the group's door. Summed over a grid of δ.
 * `draws`: of a fit without the group's edges. Domain: at least one edge. Source: formula (Bayes, importance weights).
 */
export function groupEffect(
  draws: KindDraws,
  { groupId, edges }: { groupId: string; edges: readonly GroupedEdge[] },
  sd = GROUP_EFFECT_SD,
): GroupEffect {
  invariant(edges.length > 0 && sd > 0, 'a group effect needs an edge and a belief');
  const weights = effectWeights(draws, edges, sd);
  return {
    groupId,
    edges: edges.length,
    worn: edges.filter(({ history }) => history.end === 'worn').length,
    ends: edges.reduce((sum, { ends }) => sum + ends, 0),
    lifeFactor: bandOver(weights, sd),
    probabilityLower: shareBelow(weights),
  };
}

function effectAt(point: number, sd: number): number {
  return (2 * (point / (POINTS - 1)) - 1) * REACH * sd;
}

/** Shares of belief over the grid, summing to 1. */
function effectWeights(draws: KindDraws, edges: readonly GroupedEdge[], sd: number): Float64Array {
  const grouped = edges.map((edge) => groupedDraws(draws, edge));
  const logs = new Float64Array(POINTS * draws.drawCount);
  for (let point = 0; point < POINTS; point++) {
    const effect = effectAt(point, sd);
    const stretch = Math.exp(effect);
    for (let k = 0; k < draws.drawCount; k++) {
      let log = -0.5 * (effect / sd) ** 2;
      for (const edge of grouped) log += groupedLogLik(edge, k, draws.shape[k] as number, stretch);
      logs[point * draws.drawCount + k] = log;
    }
  }
  const top = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const weights = new Float64Array(POINTS);
  let total = 0;
  for (let at = 0; at < logs.length; at++) {
    const point = Math.floor(at / draws.drawCount);
    const weight = Math.exp((logs[at] as number) - top);
    weights[point] = (weights[point] as number) + weight;
    total += weight;
  }
  return weights.map((weight) => weight / total);
}

/** Half of the middle point's share belongs to either side. */
function shareBelow(weights: Float64Array): number {
  const middle = (POINTS - 1) / 2;
  return weights.reduce(
    (sum, weight, at) => sum + (at < middle ? weight : at === middle ? weight / 2 : 0),
    0,
  );
}

function bandOver(weights: Float64Array, sd: number): Band {
  const at = (share: number): number => Math.exp(effectQuantile(weights, sd, share));
  return { low: at(0.1), median: at(0.5), high: at(0.9) };
}

/** Quantile of the effect, each point's share spread evenly over the step around it. */
function effectQuantile(weights: Float64Array, sd: number, share: number): number {
  const step = (2 * REACH * sd) / (POINTS - 1);
  let reached = 0;
  for (let point = 0; point < POINTS; point++) {
    const weight = weights[point] as number;
    if (reached + weight >= share) {
      return effectAt(point, sd) + step * ((share - reached) / weight - 0.5);
    }
    reached += weight;
  }
  return effectAt(POINTS - 1, sd);
}
