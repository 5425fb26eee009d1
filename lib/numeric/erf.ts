import { rational } from './polynomial';

/** Coefficients: W. J. Cody, Rational Chebyshev approximation for the error function, Math. Comp. 23 (1969). */
const NEAR_P = [
  0.18577770618460315, 3.1611237438705655, 113.86415415105016, 377.485237685302, 3209.3775891384694,
];
const NEAR_Q = [1, 23.601290952344122, 244.02463793444417, 1282.6165260773723, 2844.236833439171];
const MID_P = [
  2.1531153547440383e-8, 0.5641884969886701, 8.883149794388377, 66.11919063714163, 298.6351381974001,
  881.952221241769, 1712.0476126340707, 2051.0783778260716, 1230.3393547979972,
];
const MID_Q = [
  1, 15.744926110709835, 117.6939508913125, 537.1811018620099, 1621.3895745666903, 3290.7992357334597,
  4362.619090143247, 3439.3676741437216, 1230.3393548037495,
];
const FAR_P = [
  0.016315387137302097, 0.30532663496123236, 0.36034489994980445, 0.12578172611122926, 0.016083785148742275,
  0.0006587491615298378,
];
const FAR_Q = [
  1, 2.568520192289822, 1.8729528499234673, 0.5279051029514285, 0.06051834131244132, 0.0023352049762686918,
];
const INVERSE_SQRT_PI = 0.5641895835477563;
const NEAR_LIMIT = 0.46875;

/**
 * Error function, erf(x) = 2/√π · ∫₀ˣ e^(−t²) dt: the bridge to the normal distribution.
 * Domain: every number. Accuracy: a few units in the last place. Source: Cody 1969.
 * @example erf(0.5) // => 0.5204998778130465
 */
export function erf(x: number): number {
  if (Math.abs(x) <= NEAR_LIMIT) return x * rational(NEAR_P, NEAR_Q, x * x);
  return x > 0 ? 1 - erfc(x) : erfc(-x) - 1;
}

/**
 * Complementary error function, erfc(x) = 1 − erf(x), accurate far out in the tail where 1 − erf(x) would be 0.
 * Domain: every number. Source: Cody 1969.
 * @example erfc(2) // => 0.004677734981047266
 */
export function erfc(x: number): number {
  if (Number.isNaN(x)) return Number.NaN;
  const size = Math.abs(x);
  if (size <= NEAR_LIMIT) return 1 - erf(x);
  const tail =
    size > 27 ? 0 : expMinusSquare(size) * (size <= 4 ? rational(MID_P, MID_Q, size) : farRatio(size));
  return x > 0 ? tail : 2 - tail;
}

function farRatio(x: number): number {
  const inverse = 1 / (x * x);
  return (INVERSE_SQRT_PI - inverse * rational(FAR_P, FAR_Q, inverse)) / x;
}

/** e^(−x²) with x² split, so that its rounding does not reach the exponent. */
function expMinusSquare(x: number): number {
  const head = Math.trunc(x * 16) / 16;
  return Math.exp(-head * head) * Math.exp(-(x - head) * (x + head));
}
