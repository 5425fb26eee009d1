export interface RootOptions {
  readonly low: number;
  readonly high: number;
  /** Width of the bracket at which the search stops, beside a few units in the last place. Default 0. */
  readonly tolerance?: number;
  /** Default 200. */
  readonly maxIterations?: number;
}

export type RootResult =
  | {
      readonly ok: true;
      readonly root: number;
      readonly iterations: number;
      readonly stoppedBy: 'exact' | 'width';
    }
  | { readonly ok: false; readonly reason: 'no-bracket' | 'cap'; readonly iterations: number };

/**
 * Bracketed root finder: where a continuous function passes through zero between `low` and `high`.
 * For turning a probability back into ends or a date. Never leaves its bracket.
 * Errors: `no-bracket` when both ends have the same sign, `cap` when it runs out of iterations.
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), ch. 4, from memory.
 */
export function findRoot(f: (x: number) => number, options: RootOptions): RootResult {
  const { low, high, tolerance = 0, maxIterations = 200 } = options;
  let [a, b, c] = [low, high, low];
  let [fa, fb] = [f(a), f(b)];
  let fc = fa;
  if (fa === 0) return { ok: true, root: a, iterations: 0, stoppedBy: 'exact' };
  if (fb === 0) return { ok: true, root: b, iterations: 0, stoppedBy: 'exact' };
  if (!(fa * fb < 0)) return { ok: false, reason: 'no-bracket', iterations: 0 };
  let step = b - a;
  let previous = step;
  for (let iteration = 1; iteration <= maxIterations; iteration++) {
    if (fb * fc > 0) {
      [c, fc] = [a, fa];
      step = b - a;
      previous = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const least = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (fb === 0) return { ok: true, root: b, iterations: iteration, stoppedBy: 'exact' };
    if (Math.abs(half) <= least) return { ok: true, root: b, iterations: iteration, stoppedBy: 'width' };
    const trial = interpolate([a, fa], [b, fb], [c, fc], half);
    const accept =
      Math.abs(previous) >= least && Math.abs(trial) < Math.min(1.5 * Math.abs(half), Math.abs(previous) / 2);
    previous = accept ? step : half;
    step = accept ? trial : half;
    [a, fa] = [b, fb];
    b += Math.abs(step) > least ? step : Math.sign(half) * Math.max(least, Number.MIN_VALUE);
    fb = f(b);
  }
  return { ok: false, reason: 'cap', iterations: maxIterations };
}

type Point = readonly [x: number, y: number];

/** Step by inverse quadratic interpolation (secant when two points coincide); bisection when it points outwards. */
function interpolate([a, fa]: Point, [b, fb]: Point, [c, fc]: Point, half: number): number {
  const s = fb / fa;
  let p = 2 * half * s;
  let q = 1 - s;
  if (a !== c) {
    const t = fa / fc;
    const r = fb / fc;
    p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
    q = (t - 1) * (r - 1) * (s - 1);
  }
  const step = p > 0 ? p / -q : -p / q;
  return Number.isFinite(step) && step * half > 0 ? step : half;
}
