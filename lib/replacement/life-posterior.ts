import type { Ensemble } from '../ensemble/build-ensemble';
import { LOG_LOGISTIC_STRETCH } from '../life/life-law';
import { scaleFromMedian } from '../life/weibull';
import type { EdgeKind } from '../shop/vocabulary';

/** The life of an edge as well as it is known: one life per draw, Weibull or log-logistic, and the rate at which incidents end it first. */
export interface LifePosterior {
  readonly shape: Float64Array;
  readonly scale: Float64Array;
  /** 1 in the draws of a log-logistic life, S = 1/(1 + (t/scale)^shape); absent: Weibull in all of them. */
  readonly logLogistic?: Uint8Array | undefined;
  /** Dropped, chipped, cross-threaded: per unit of exposure, whatever the age. */
  readonly incidentRate: Float64Array;
}

/**
 * The life of an edge of a part and size after so many regrinds, draw by draw of an ensemble. Undefined for a kind that nothing is
 * known of.
 */
export function edgeLife(
  ensemble: Pick<Ensemble, 'draws' | 'medianLife'>,
  kind: EdgeKind,
  edge: { readonly partId: string; readonly odIn: number; readonly regrinds: number },
): LifePosterior | undefined {
  const draws = ensemble.draws(kind);
  const median = ensemble.medianLife(kind, edge);
  if (draws === undefined || median === undefined) return undefined;
  const { logLogistic, incidentRate } = draws;
  const shape = draws.shape.map((own, k) => (logLogistic?.[k] === 1 ? LOG_LOGISTIC_STRETCH * own : own));
  const scale = median.map((life, k) =>
    logLogistic?.[k] === 1 ? life : scaleFromMedian({ shape: shape[k] as number, median: life }),
  );
  return { shape, scale, logLogistic, incidentRate };
}

/** What edges changed at one age come to, in each draw. */
export interface Cycles {
  /** Mean exposure that an edge gets through. */
  readonly exposure: Float64Array;
  /** Share of edges that end before they are changed. */
  readonly failed: Float64Array;
}

const CELLS = 24;

/**
 * Mean cycle and share of failures in each draw when edges are changed at `age`, or run to wear-out (null).
 *
 *   I_k = ∫₀ᵗ R_k(u) du,  F_k = 1 − R_k(t),  R_k(t) = S_k(t)·e^(−rate·t),  S_k the draw's own law
 *
 * Age in the unit of `scale`. Source: formula (competing risks); Simpson in cells that widen.
 */
export function cyclesAt(life: LifePosterior, age: number | null): Cycles {
  const exposure = new Float64Array(life.shape.length);
  const failed = new Float64Array(life.shape.length).fill(1);
  for (let k = 0; k < exposure.length; k++) {
    const to = age ?? (life.scale[k] as number);
    exposure[k] = livedUpTo(life, k, to) + (age === null ? lifeBeyond(life, k, to) : 0);
    if (age !== null) failed[k] = -Math.expm1(-hazardAt(life, k, age));
  }
  return { exposure, failed };
}

/** −ln R_k at an age: (t/scale)^shape, or ln(1 + (t/scale)^shape), and the incidents. Source: formula. */
export function hazardAt(life: LifePosterior, k: number, age: number): number {
  const power = (age / (life.scale[k] as number)) ** (life.shape[k] as number);
  const worn = life.logLogistic?.[k] === 1 ? Math.log1p(power) : power;
  return worn + age * (life.incidentRate[k] as number);
}

function livedUpTo(life: LifePosterior, k: number, age: number): number {
  let [sum, from, before] = [0, 0, 1];
  for (let i = 1; i <= CELLS; i++) {
    const to = age * (i / CELLS) ** 2;
    const after = Math.exp(-hazardAt(life, k, to));
    sum += ((to - from) / 6) * (before + 4 * Math.exp(-hazardAt(life, k, (from + to) / 2)) + after);
    [from, before] = [to, after];
  }
  return sum;
}

/** ∫ R_k from an age on: cells that widen, until nothing is left. Domain: from > 0. */
export function lifeBeyond(life: LifePosterior, k: number, from: number): number {
  let [sum, width] = [0, from / 16];
  for (let at = from; Math.exp(-hazardAt(life, k, at)) * width > 1e-7 * from; width *= 1.25) {
    const [near, middle, far] = [at, at + width / 2, at + width].map((age) =>
      Math.exp(-hazardAt(life, k, age)),
    );
    sum += (width / 6) * ((near as number) + 4 * (middle as number) + (far as number));
    at += width;
  }
  return sum;
}

/** Draws that a curve is averaged over: evenly spaced out of the ensemble’s, whose order means nothing. */
const CURVE_DRAWS = 512;

/** Every so many-th draw of a life: enough for a mean, at a part of the time. */
export function thinned(life: LifePosterior, draws = CURVE_DRAWS): LifePosterior {
  const stride = Math.max(1, Math.floor(life.shape.length / draws));
  const some = (values: Float64Array) => values.filter((_, k) => k % stride === 0);
  return {
    ...{ shape: some(life.shape), scale: some(life.scale), incidentRate: some(life.incidentRate) },
    logLogistic: life.logLogistic?.filter((_, k) => k % stride === 0),
  };
}
