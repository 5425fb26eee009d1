import { lnGamma } from './ln-gamma';
import { normalQuantile } from './normal';

const MAX_TERMS = 100_000;
const MAX_STEPS = 100;

/**
 * Regularised lower incomplete gamma function, P(a, x): the chance that a gamma figure of shape a and rate 1 is below x.
 * For the rate of incidents, which is known only as well as the shop's log allows.
 * Domain: a > 0, x >= 0. Source: formula; power series below a + 1, continued fraction (modified Lentz) above.
 * @example gammaP(1, 1) // => 0.6321205588285577
 */
export function gammaP(a: number, x: number): number {
  if (!(a > 0) || !(x >= 0)) return Number.NaN;
  if (x === 0) return 0;
  return x < a + 1 ? seriesP(a, x) : 1 - fractionQ(a, x);
}

/**
 * Regularised upper incomplete gamma function, Q(a, x) = 1 − P(a, x), accurate in the far tail.
 * Domain: a > 0, x >= 0. Source: as gammaP.
 * @example gammaQ(1, 2) // => 0.1353352832366127
 */
export function gammaQ(a: number, x: number): number {
  if (!(a > 0) || !(x >= 0)) return Number.NaN;
  if (x === 0) return 1;
  return x < a + 1 ? 1 - seriesP(a, x) : fractionQ(a, x);
}

/**
 * Gamma quantile: the value that a gamma figure of the given shape and rate stays below with probability p.
 * Domain: shape > 0, rate > 0, 0 <= p < 1. Source: formula; Newton on log x inside a bracket, start by Wilson and Hilferty (1931).
 * @example gammaQuantile({ shape: 1, rate: 2 }, 0.5) // => 0.34657359027997264
 */
export function gammaQuantile({ shape, rate }: { shape: number; rate: number }, p: number): number {
  if (!(shape > 0 && rate > 0 && p >= 0 && p <= 1)) return Number.NaN;
  if (p === 0) return 0;
  if (p === 1) return Number.POSITIVE_INFINITY;
  return Math.exp(logQuantile(shape, p)) / rate;
}

function logQuantile(shape: number, p: number): number {
  const lowTail = p <= 0.5;
  const target = lowTail ? Math.log(p) : Math.log1p(-p);
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  let at = startOf(shape, p);
  for (let step = 0; step < MAX_STEPS; step++) {
    const x = Math.exp(at);
    const tail = lowTail ? gammaP(shape, x) : gammaQ(shape, x);
    const miss = Math.log(tail) - target;
    if (lowTail ? miss > 0 : miss < 0) high = at;
    else low = at;
    const slope = Math.exp(shape * at - x - lnGamma(shape)) / tail;
    const wanted = at - (lowTail ? miss : -miss) / slope;
    const inside = wanted > low && wanted < high;
    const next = inside ? wanted : bisect(low, high, at);
    if (Math.abs(next - at) <= 1e-15 * Math.max(1, Math.abs(at))) return next;
    at = next;
  }
  return at;
}

function bisect(low: number, high: number, at: number): number {
  if (Number.isFinite(low) && Number.isFinite(high)) return (low + high) / 2;
  return Number.isFinite(low) ? at + 1 : at - 1;
}

function startOf(shape: number, p: number): number {
  const ninth = 1 / (9 * shape);
  const cubeRoot = 1 - ninth + normalQuantile(p) * Math.sqrt(ninth);
  if (shape > 0.5 && cubeRoot > 0.1) return Math.log(shape) + 3 * Math.log(cubeRoot);
  return (Math.log(p) + lnGamma(shape + 1)) / shape;
}

function seriesP(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < MAX_TERMS; n++) {
    term *= x / (a + n);
    sum += term;
    if (term < sum * 1e-17) break;
  }
  return sum * Math.exp(a * Math.log(x) - x - lnGamma(a));
}

function fractionQ(a: number, x: number): number {
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < MAX_TERMS; n++) {
    const numerator = -n * (n - a);
    b += 2;
    d = 1 / nonZero(numerator * d + b, tiny);
    c = nonZero(b + numerator / c, tiny);
    const factor = d * c;
    h *= factor;
    if (Math.abs(factor - 1) < 1e-16) break;
  }
  return h * Math.exp(a * Math.log(x) - x - lnGamma(a));
}

function nonZero(value: number, tiny: number): number {
  return Math.abs(value) < tiny ? tiny : value;
}
