import { erfc } from './erf';
import { rational } from './polynomial';

/**
 * Normal cumulative distribution, Φ(z): the chance that a standard normal figure is at most z.
 * Domain: every number. Source: formula, Φ(z) = erfc(−z/√2)/2.
 * @example normalCdf(0) // => 0.5
 */
export function normalCdf(z: number): number {
  return erfc(-z * Math.SQRT1_2) / 2;
}

/**
 * Normal quantile, Φ⁻¹(p): which standard normal figure is passed with probability 1 − p.
 * Domain: 0 <= p <= 1 (the ends give −∞ and ∞; outside: NaN). Accuracy about 1e-16 relative.
 * Source: M. J. Wichura, algorithm AS 241 (PPND16), Applied Statistics 37 (1988).
 * @example normalQuantile(0.5) // => 0
 */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) return Number.NaN;
  if (p === 0) return Number.NEGATIVE_INFINITY;
  if (p === 1) return Number.POSITIVE_INFINITY;
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * rational(CENTRE_P, CENTRE_Q, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const size = r <= 5 ? rational(MID_P, MID_Q, r - 1.6) : rational(FAR_P, FAR_Q, r - 5);
  return q < 0 ? -size : size;
}

/** AS 241 coefficients, highest power first. */
const CENTRE_P = [
  2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
  1971.5909503065513, 133.14166789178438, 3.3871328727963665,
];
const CENTRE_Q = [
  5226.495278852546, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
  687.1870074920579, 42.31333070160091, 1,
];
const MID_P = [
  0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
  5.769497221460691, 4.630337846156546, 1.4234371107496835,
];
const MID_Q = [
  1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
  1.6763848301838038, 2.053191626637759, 1,
];
const FAR_P = [
  2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124,
  0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
];
const FAR_Q = [
  2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133,
  0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
];
