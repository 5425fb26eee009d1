import { lnGamma } from './ln-gamma';

const MAX_TERMS = 10_000;
const TINY = 1e-300;

/**
 * Regularised incomplete beta function, I_x(a, b): the chance that a beta figure of shapes a and b is at most x.
 * For Student's t, behind supplier lead times. Domain: a > 0, b > 0, 0 <= x <= 1 (elsewhere NaN).
 * Source: formula; continued fraction by the modified Lentz method, with I_x(a, b) = 1 − I_{1−x}(b, a) past the mean.
 * @example incompleteBeta({ a: 1, b: 2 }, 0.5) // => 0.75
 */
export function incompleteBeta({ a, b }: { readonly a: number; readonly b: number }, x: number): number {
  if (!(a > 0 && b > 0 && x >= 0 && x <= 1)) return Number.NaN;
  if (x === 0 || x === 1) return x;
  const front = Math.exp(lnGamma(a + b) - lnGamma(a) - lnGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2)
    ? (front * fraction(a, b, x)) / a
    : 1 - (front * fraction(b, a, 1 - x)) / b;
}

function fraction(a: number, b: number, x: number): number {
  let c = 1;
  let d = 1 / nonZero(1 - ((a + b) * x) / (a + 1));
  let h = d;
  for (let m = 1; m < MAX_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / nonZero(1 + even * d);
    c = nonZero(1 + even / c);
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nonZero(1 + odd * d);
    c = nonZero(1 + odd / c);
    h *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return h;
}

function nonZero(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}
