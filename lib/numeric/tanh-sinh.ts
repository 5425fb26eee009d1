/** A point of the rule on (0, 1): how far it is from either end, each to full relative accuracy, and its weight. */
export interface QuadraturePoint {
  readonly fromLow: number;
  readonly fromHigh: number;
  readonly weight: number;
}

const STEP = 1 / 16;
const REACH = 4.4;
let kept: readonly QuadraturePoint[] | undefined;

/**
 * Points and weights of the double exponential rule on (0, 1): ∫₀¹ f = Σ weight·f(fromLow). Meant for functions with
 * corners or poles at the ends, x^p with p > −1: there plain rules are slow. About 140 points, 1e-14 for smooth functions.
 * Source: H. Takahasi and M. Mori (1974), formula: x = 1/(1 + exp(−π·sinh t)), weights from dx/dt.
 */
export function endpointQuadrature(): readonly QuadraturePoint[] {
  if (kept !== undefined) return kept;
  const points: QuadraturePoint[] = [];
  for (let t = -REACH; t <= REACH + STEP / 2; t += STEP) {
    const e = Math.exp(-Math.PI * Math.sinh(t));
    const fromLow = 1 / (1 + e);
    const fromHigh = e / (1 + e);
    const weight = STEP * Math.PI * Math.cosh(t) * fromLow * fromHigh;
    if (fromLow > 0 && fromHigh > 0 && weight > 0) points.push({ fromLow, fromHigh, weight });
  }
  kept = points;
  return points;
}
