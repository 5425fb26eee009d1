import { cdf, mean, type Weibull } from '../life/weibull';
import { gammaP } from '../numeric/gamma';

/**
 * Continuous ranked probability score of a Weibull life against the life that came: how far the whole forecast was out, in
 * exposure. y·(2F(y) − 1) − 2μ·P(1 + 1/β, (y/η)^β) + μ·2^(−1/β), μ the mean, P the lower incomplete gamma function.
 * Domain: y >= 0. Source: formula (Gneiting and Raftery, JASA 102 (2007), for the score).
 */
export function crpsOfWeibull(life: Weibull, came: number): number {
  const { shape, scale } = life;
  const average = mean(life);
  const far = 2 * average * gammaP(1 + 1 / shape, (came / scale) ** shape);
  return came * (2 * cdf(life, came) - 1) - far + average * 2 ** (-1 / shape);
}

/**
 * The same of draws against what came: mean |x − y| − ½·mean |x − x'|, over all pairs. Domain: at least one draw, sorted.
 * Source: formula.
 * @example crpsOfDraws([1, 3], 2) // => 0.5
 */
export function crpsOfDraws(sorted: ArrayLike<number>, came: number): number {
  const n = sorted.length;
  let [miss, pairs] = [0, 0];
  for (let i = 0; i < n; i++) {
    const x = sorted[i] as number;
    miss += Math.abs(x - came);
    pairs += (2 * i + 1 - n) * x;
  }
  return miss / n - pairs / (n * n);
}
