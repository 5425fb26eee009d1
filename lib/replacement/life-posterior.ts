/** The life of an edge as well as it is known: one Weibull life per draw, and the rate at which incidents end it first. */
export interface LifePosterior {
  readonly shape: Float64Array;
  readonly scale: Float64Array;
  /** Dropped, chipped, cross-threaded: per unit of exposure, whatever the age. */
  readonly incidentRate: Float64Array;
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
 *   I_k = ∫₀ᵗ R_k(u) du,  F_k = 1 − R_k(t),  R_k(t) = e^(−(t/scale)^shape − rate·t)
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

function hazardAt({ shape, scale, incidentRate }: LifePosterior, k: number, age: number): number {
  return (age / (scale[k] as number)) ** (shape[k] as number) + age * (incidentRate[k] as number);
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
