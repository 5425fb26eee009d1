/** What is known of one life: it went on beyond an exposure, ended exactly at it, or ended between two. */
export type LifeEvidence = 'beyond' | 'exactly' | 'between';

/** Positions of the four figures that one edge's likelihood depends on. */
export const LOG_SHAPE = 0;
export const LOG_MEDIAN = 1;
export const LOG_EXPOSURE = 2;
/** Log of (exposure in the row of the wear-out ÷ exposure before it). */
export const LOG_RATIO = 3;
export const FIGURES = 4;

/** Log-likelihood of one edge with first and second derivatives (row-major 4 × 4) by the four figures. */
export interface EdgeTerms {
  value: number;
  readonly gradient: Float64Array;
  readonly hessian: Float64Array;
}

export function roomForTerms(): EdgeTerms {
  return { value: 0, gradient: new Float64Array(FIGURES), hessian: new Float64Array(FIGURES * FIGURES) };
}

export const LOG_LN2 = Math.log(Math.LN2);

/** Adds a term that depends on the figures through z alone: `first`, `second` its derivatives by z. */
export function addByHazard(
  term: { first: number; second: number; z: number; shape: number },
  out: EdgeTerms,
): void {
  const { first, second, shape } = term;
  const byShape = term.z - LOG_LN2;
  addOuter(out, second, byShape, -shape, shape, 0);
  addGradient(out, first, byShape, -shape, shape, 0);
  addBend(out, first, byShape, shape);
}

/** G = ln(e^x − 1) and its derivatives by ln x. Source: formula. */
export function growthOf(x: number): { value: number; first: number; second: number } {
  if (x < 1e-300) return { value: Math.log(x), first: 1, second: 0 };
  const first = -x / Math.expm1(-x);
  const value = x > 700 ? x : Math.log(Math.expm1(x));
  return { value, first, second: first * (1 - first * Math.exp(-x)) };
}

export function addGradient(
  out: EdgeTerms,
  factor: number,
  s: number,
  m: number,
  l: number,
  d: number,
): void {
  const gradient = out.gradient;
  gradient[0] = (gradient[0] as number) + factor * s;
  gradient[1] = (gradient[1] as number) + factor * m;
  gradient[2] = (gradient[2] as number) + factor * l;
  gradient[3] = (gradient[3] as number) + factor * d;
}

const outer = new Float64Array(FIGURES);

/** Adds factor·vvᵀ, v = (s, m, l, d). */
export function addOuter(out: EdgeTerms, factor: number, s: number, m: number, l: number, d: number): void {
  const hessian = out.hessian;
  outer[0] = s;
  outer[1] = m;
  outer[2] = l;
  outer[3] = d;
  for (let a = 0; a < FIGURES; a++) {
    const scaled = factor * (outer[a] as number);
    for (let b = 0; b < FIGURES; b++) {
      hessian[a * FIGURES + b] = (hessian[a * FIGURES + b] as number) + scaled * (outer[b] as number);
    }
  }
}

/** Adds factor times the second derivatives of z: by (s, s) z − ln ln 2, by (s, m) −β, by (s, l) β. */
export function addBend(out: EdgeTerms, factor: number, byShape: number, shape: number): void {
  const hessian = out.hessian;
  const cross = factor * shape;
  hessian[0] = (hessian[0] as number) + factor * byShape;
  hessian[1] = (hessian[1] as number) - cross;
  hessian[4] = (hessian[4] as number) - cross;
  hessian[2] = (hessian[2] as number) + cross;
  hessian[8] = (hessian[8] as number) + cross;
}
