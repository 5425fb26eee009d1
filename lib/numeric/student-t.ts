import { incompleteBeta } from './incomplete-beta';
import { lnGamma } from './ln-gamma';
import { normalQuantile } from './normal';

const MAX_STEPS = 200;

/**
 * Student's t, cumulative distribution: the chance that a t figure of `dof` degrees of freedom is at most t.
 * What is left of a normal figure when its spread is known only from few cases. Domain: dof > 0.
 * Source: formula, F(t) = 1 − I_x(dof/2, 1/2)/2 with x = dof/(dof + t²), t >= 0; by symmetry below.
 * @example studentTCdf(1, 1) // => 0.75
 */
export function studentTCdf(t: number, dof: number): number {
  if (!(dof > 0) || Number.isNaN(t)) return Number.NaN;
  const tail = upperTail(Math.abs(t), dof);
  return t >= 0 ? 1 - tail : tail;
}

/**
 * Student's t, quantile: which t figure is passed with probability 1 − p. Domain: dof > 0, 0 <= p <= 1.
 * Source: formula; Newton on the cumulative distribution inside a bracket, started from the normal quantile.
 * @example studentTQuantile(0.75, 1) // => 1
 */
export function studentTQuantile(p: number, dof: number): number {
  if (!(dof > 0 && p >= 0 && p <= 1)) return Number.NaN;
  if (p === 0.5) return 0;
  if (p === 0 || p === 1) return p === 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const size = positiveQuantile(Math.min(p, 1 - p), dof);
  return p < 0.5 ? -size : size;
}

/** The t above which a share `tail` (< 1/2) lies: Newton on the log of the tail, which is nearly straight in ln t. */
function positiveQuantile(tail: number, dof: number): number {
  let low = 0;
  let high = Number.POSITIVE_INFINITY;
  let at = -normalQuantile(tail);
  const target = Math.log(tail);
  for (let step = 0; step < MAX_STEPS; step++) {
    const mass = upperTail(at, dof);
    const miss = Math.log(mass) - target;
    if (miss > 0) low = at;
    else high = at;
    const slope = (density(at, dof) * at) / mass;
    const wanted = at * Math.exp(miss / slope);
    const inside = wanted > low && wanted < high;
    const next = inside ? wanted : Number.isFinite(high) ? (low + high) / 2 : at * 2;
    if (Math.abs(next - at) <= 2e-16 * at) return next;
    at = next;
  }
  return at;
}

function upperTail(t: number, dof: number): number {
  if (t === Number.POSITIVE_INFINITY) return 0;
  const square = t * t;
  if (square < dof) return 0.5 - incompleteBeta({ a: 0.5, b: dof / 2 }, square / (dof + square)) / 2;
  return incompleteBeta({ a: dof / 2, b: 0.5 }, dof / (dof + square)) / 2;
}

function density(t: number, dof: number): number {
  const norm = lnGamma((dof + 1) / 2) - lnGamma(dof / 2) - Math.log(dof * Math.PI) / 2;
  return Math.exp(norm - ((dof + 1) / 2) * Math.log1p((t * t) / dof));
}
