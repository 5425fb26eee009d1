import { invariant } from '../invariant';
import { barycentricWeights, chebyshevPoints, interpolationRow } from '../numeric/chebyshev';
import { endpointQuadrature } from '../numeric/tanh-sinh';

/** Edges of Weibull life worn out one after another over some exposure. */
export interface SparesQuestion {
  readonly shape: number;
  /** Exposure to be cut, in scales (characteristic lives). */
  readonly exposure: number;
  /** What the first edge has cut already, in scales. Default 0: new. */
  readonly firstAge?: number;
  /** Most spares asked about. */
  readonly sparesMost: number;
}

/**
 * Chance that k spares suffice, for k = 0 … sparesMost: that the edge in use and k new ones together outlast the exposure,
 * P(T₀ + T₁ + … + T_k > x). With shape 1 it is Poisson. G₀ = 1, G_{n+1}(x) = ∫₀ˣ f(u)·G_n(x − u) du with G_n = P(n lives
 * are used up by x); each G_n is a smooth function of x^shape and is kept at Chebyshev points of it, the integral is taken
 * by tanh-sinh, which does not mind the corners. Accurate to about 1e-10.
 * Domain: shape 0.3 … 20, exposure 0 … 20 scales, firstAge >= 0. Source: formula (renewal theory).
 */
export function weibullSpares(question: SparesQuestion): number[] {
  const { shape, exposure, firstAge = 0, sparesMost } = question;
  invariant(
    shape > 0 && exposure >= 0 && firstAge >= 0,
    'weibullSpares requires a shape above 0 and figures of 0 or more',
  );
  if (exposure === 0) return Array.from({ length: sparesMost + 1 }, () => 1);
  const grid = renewalGrid(shape, exposure);
  const first = integralRow(grid, exposure, firstAge);
  const enough: number[] = [];
  let used = Float64Array.from(grid.points, () => 1);
  for (let k = 0; k <= sparesMost; k++) {
    enough.push(1 - Math.min(1, Math.max(0, dot(first, used))));
    used = Float64Array.from(grid.rows, (row) => dot(row, used));
  }
  return enough;
}

/**
 * Edges used up on average over some exposure, beginning with a new one: the renewal function M(x) = Σ P(n lives are used
 * up by x), n = 1, 2, … Domain and source: as weibullSpares.
 */
export function weibullRenewal({
  shape,
  exposure,
}: {
  readonly shape: number;
  readonly exposure: number;
}): number {
  if (exposure === 0) return 0;
  const grid = renewalGrid(shape, exposure);
  let used = Float64Array.from(grid.points, () => 1);
  let total = 0;
  for (let n = 0; n < 1000; n++) {
    used = Float64Array.from(grid.rows, (row) => dot(row, used));
    const term = used[used.length - 1] as number;
    total += term;
    if (term < 1e-14) break;
  }
  return total;
}

/** Chebyshev points of x^shape, and for each the weights with which the function there is integrated against f. */
interface RenewalGrid {
  /** x^shape, ascending, from 0 to exposure^shape. */
  readonly points: Float64Array;
  readonly weights: Float64Array;
  readonly rows: readonly Float64Array[];
  readonly shape: number;
}

function renewalGrid(shape: number, exposure: number): RenewalGrid {
  const most = exposure ** shape;
  const count = Math.min(320, Math.ceil(36 + 7 * Math.sqrt(most)));
  const points = chebyshevPoints(count, most);
  const weights = barycentricWeights(count);
  const grid = { points, weights, shape };
  const rows = Array.from(points, (point) => integralRow(grid, point ** (1 / shape), 0));
  return { ...grid, rows };
}

/**
 * Weights w with ∫₀ˣ f(u | age)·G(x − u) du = Σ w_j·G(point j). The integral is taken over the survival s of the life,
 * u = (a^β − ln s)^(1/β) − a, so that a sharp density is met wherever it lies.
 */
function integralRow(
  { points, weights, shape }: Omit<RenewalGrid, 'rows'>,
  x: number,
  age: number,
): Float64Array {
  const row = new Float64Array(points.length);
  if (x === 0) return row;
  const aged = age ** shape;
  const survives = Math.exp(aged - (age + x) ** shape);
  const dies = -Math.expm1(aged - (age + x) ** shape);
  for (const { fromHigh, weight } of endpointQuadrature()) {
    const survival = survives + dies * fromHigh;
    const used = fromHigh > 0.5 ? -Math.log1p(dies * (fromHigh - 1)) : -Math.log(survival);
    const left = Math.max(0, x - ((aged + used) ** (1 / shape) - age));
    const at = interpolationRow(points, weights, left ** shape);
    for (let j = 0; j < row.length; j++) row[j] = (row[j] as number) + weight * dies * (at[j] as number);
  }
  return row;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}
