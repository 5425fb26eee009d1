import { choleskyFactor, choleskySolve } from './cholesky';

/** A smooth function at one point: value, gradient, and the row-major matrix of second derivatives. */
export interface Surface {
  readonly value: number;
  readonly gradient: Float64Array;
  readonly hessian: Float64Array;
}

export interface NewtonOptions {
  readonly start: ArrayLike<number>;
  readonly evaluate: (x: Float64Array) => Surface;
  /** Largest change of any one figure in a step. Default 2 (the figures of the fits are logarithms). */
  readonly maxStep?: number;
  /** Cap on accepted and refused steps together. Default 200. */
  readonly maxIterations?: number;
  /** Stops when the expected gain of a full step is below this share of 1 + |value|. Default 1e-14. */
  readonly tolerance?: number;
}

export interface NewtonResult {
  readonly x: Float64Array;
  readonly surface: Surface;
  readonly iterations: number;
  /** `converged`: no step is worth taking; `stalled`: no step improves the value; `cap`: out of iterations. */
  readonly stoppedBy: 'converged' | 'stalled' | 'cap';
}

const FIRST_RIDGE = 1e-3;
const MAX_RIDGE = 1e12;

/**
 * Damped Newton minimiser: a step solves (H + ridge·D)·step = −gradient, the ridge (Levenberg's) growing until the value
 * falls and shrinking afterwards. For finding the life figures that fit a shop's log best.
 * Errors: none thrown; the reason for stopping is returned. Source: formula (Levenberg 1944, Marquardt 1963).
 */
export function minimizeNewton(options: NewtonOptions): NewtonResult {
  const { evaluate, maxStep = 2, maxIterations = 200, tolerance = 1e-14 } = options;
  let x = Float64Array.from(options.start);
  let surface = evaluate(x);
  let ridge = 0;
  for (let iteration = 1; iteration <= maxIterations; iteration++) {
    const full = ridgeStep(surface, x.length, 0, maxStep);
    const gain = full === undefined ? Number.POSITIVE_INFINITY : -0.5 * dot(full, surface.gradient);
    const last = gain <= tolerance * (1 + Math.abs(surface.value));
    const step = last || ridge === 0 ? full : ridgeStep(surface, x.length, ridge, maxStep);
    if (step !== undefined) {
      const next = x.map((value, i) => value + (step[i] as number));
      const reached = evaluate(next);
      const rounding = last ? 1e-12 * (1 + Math.abs(surface.value)) : 0;
      const accepted = reached.value <= surface.value + rounding;
      if (accepted) [x, surface] = [next, reached];
      if (last) return { x, surface, iterations: iteration, stoppedBy: 'converged' };
      if (accepted) {
        ridge = ridge <= FIRST_RIDGE ? 0 : ridge / 10;
        continue;
      }
    }
    ridge = ridge === 0 ? FIRST_RIDGE : ridge * 10;
    if (ridge > MAX_RIDGE) return { x, surface, iterations: iteration, stoppedBy: 'stalled' };
  }
  return { x, surface, iterations: maxIterations, stoppedBy: 'cap' };
}

/** The damped step, shortened to `maxStep`; undefined when the ridged matrix is not positive definite. */
function ridgeStep(surface: Surface, n: number, ridge: number, maxStep: number): Float64Array | undefined {
  const matrix = Float64Array.from(surface.hessian);
  for (let i = 0; i < n; i++) {
    const diagonal = Math.abs(matrix[i * n + i] as number);
    matrix[i * n + i] = (matrix[i * n + i] as number) + ridge * Math.max(diagonal, 1e-3);
  }
  const lower = choleskyFactor(matrix, n);
  if (lower === undefined) return undefined;
  const step = choleskySolve(lower, n, surface.gradient).map((value) => -value);
  const longest = step.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  if (!Number.isFinite(longest)) return undefined;
  return longest > maxStep ? step.map((value) => (value * maxStep) / longest) : step;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}
