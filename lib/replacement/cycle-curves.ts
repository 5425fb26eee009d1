import { invariant } from '../invariant';
import { hazardAt, type LifePosterior, lifeBeyond } from './life-posterior';

/**
 * What every cost of changing at an age is made of, averaged over the draws. With I_k(t) = ∫₀ᵗ R_k, the mean exposure of
 * a cycle in draw k:
 *
 *   E_k[(c_p·R_k + c_f·F_k)/I_k] = c_p·E_k[1/I_k] + (c_f − c_p)·E_k[F_k/I_k]
 */
export interface CycleCurves {
  /** Ages in steps that widen from zero on: the i-th of n is (i/n)² of the last. */
  readonly ages: Float64Array;
  /** E[1/I(t)]: changes per unit of exposure. */
  readonly changes: Float64Array;
  /** E[F(t)/I(t)]: changes in mid-job per unit of exposure. */
  readonly failures: Float64Array;
  /** E[R(t)]: share of edges that get so far. */
  readonly survival: Float64Array;
  /** E[1/I(∞)]: changes per unit of exposure when every edge is run to wear-out. */
  readonly runChanges: number;
}

/** Points of every curve. */
export const CELLS = 192;
/** The curves end where so small a share of edges is left. */
const LAST_SHARE = 1e-3;

/**
 * The curves of a part: Simpson in cells that widen, up to an age that one edge in a thousand sees.
 * R_k(t) = S_k(t)·e^(−rate·t). Source: formula (competing risks, renewal reward).
 */
export function cycleCurves(life: LifePosterior): CycleCurves {
  const count = life.shape.length;
  invariant(count > 0, 'cycleCurves requires at least 1 draw');
  const longest = longestAge(life);
  const ages = Float64Array.from({ length: CELLS }, (_, i) => longest * ((i + 1) / CELLS) ** 2);
  const middles = ages.map((age, i) => (age + (ages[i - 1] ?? 0)) / 2);
  const [logAges, logMiddles] = [ages.map(Math.log), middles.map(Math.log)];
  const changes = new Float64Array(CELLS);
  const failures = new Float64Array(CELLS);
  const survival = new Float64Array(CELLS);
  let runChanges = 0;
  for (let k = 0; k < count; k++) {
    const [beta, rate] = [life.shape[k] as number, life.incidentRate[k] as number];
    const logScale = Math.log(life.scale[k] as number);
    const tailed = life.logLogistic?.[k] === 1;
    const wornBy = (logAge: number): number => {
      const power = Math.exp(beta * (logAge - logScale));
      return tailed ? Math.log1p(power) : power;
    };
    let before = 1;
    let cycle = 0;
    for (let i = 0; i < CELLS; i++) {
      const age = ages[i] as number;
      const at = middles[i] as number;
      const halfway = Math.exp(-wornBy(logMiddles[i] as number) - rate * at);
      const hazard = wornBy(logAges[i] as number) + rate * age;
      const lasts = Math.exp(-hazard);
      cycle += ((age - at) / 3) * (before + 4 * halfway + lasts);
      changes[i] = (changes[i] as number) + 1 / cycle / count;
      failures[i] = (failures[i] as number) - Math.expm1(-hazard) / cycle / count;
      survival[i] = (survival[i] as number) + lasts / count;
      before = lasts;
    }
    runChanges += 1 / (cycle + lifeBeyond(life, k, ages[CELLS - 1] as number)) / count;
  }
  return { ages, changes, failures, survival, runChanges };
}

/** Mean share of edges that get to an age. */
function shareAt(life: LifePosterior, age: number): number {
  let sum = 0;
  for (let k = 0; k < life.shape.length; k++) sum += Math.exp(-hazardAt(life, k, age));
  return sum / life.shape.length;
}

function longestAge(life: LifePosterior): number {
  let high = 0;
  for (const scale of life.scale) high += scale / life.scale.length;
  while (shareAt(life, high) > LAST_SHARE) high *= 2;
  let low = 0;
  for (let step = 0; step < 20; step++) {
    const middle = (low + high) / 2;
    if (shareAt(life, middle) > LAST_SHARE) low = middle;
    else high = middle;
  }
  return high;
}
