import { polynomial } from './polynomial';

/** ζ(k) − 1 for k = 2 … 31, to double precision. Source: formula, from 40-digit arithmetic (mpmath). */
const ZETA_LESS_ONE = [
  0.6449340668482264, 0.2020569031595943, 0.08232323371113819, 0.03692775514336993, 0.01734306198444914,
  0.008349277381922827, 0.00407735619794434, 0.0020083928260822143, 0.0009945751278180853,
  0.0004941886041194645, 0.0002460865533080483, 0.00012271334757848915, 6.124813505870483e-5,
  3.058823630702049e-5, 1.528225940865187e-5, 7.637197637899763e-6, 3.81729326499984e-6, 1.908212716553939e-6,
  9.539620338727962e-7, 4.769329867878064e-7, 2.38450502727733e-7, 1.1921992596531106e-7,
  5.960818905125948e-8, 2.980350351465228e-8, 1.4901554828365043e-8, 7.45071178983543e-9,
  3.725334024788457e-9, 1.862659723513049e-9, 9.313274324196682e-10, 4.656629065033784e-10,
];
const SERIES = ZETA_LESS_ONE.map((zeta, i) => ((i % 2 === 0 ? 1 : -1) * zeta) / (i + 2)).reverse();
/** 1 − Euler's constant. */
const ONE_LESS_EULER = 0.42278433509846713;
/** Stirling's series in 1/z², highest power first: B₂ₖ/(2k(2k − 1)). */
const STIRLING = [1 / 156, -691 / 360360, 1 / 1188, -1 / 1680, 1 / 1260, -1 / 360, 1 / 12];
const HALF_LN_TWO_PI = 0.9189385332046727;

/**
 * Natural logarithm of the gamma function, ln Γ(z), with full relative accuracy also near its zeros at 1 and 2.
 * For the mean life of a Weibull edge: mean = scale · Γ(1 + 1/shape).
 * Domain: z > 0 (elsewhere NaN). Source: formula; Taylor series about 2, Stirling's series from 10 on.
 * @example lnGamma(0.5) // => 0.5723649429247001
 */
export function lnGamma(z: number): number {
  if (!(z > 0)) return Number.NaN;
  if (z < 0.5) return aboutTwo(z) - Math.log1p(z) - Math.log(z);
  if (z < 1.5) return aboutTwo(z - 1) - Math.log1p(z - 1);
  if (z < 2.5) return aboutTwo(z - 2);
  return z < 10 ? stepDown(z) : stirling(z);
}

/** ln Γ(2 + x) for |x| <= 1/2. */
function aboutTwo(x: number): number {
  return x * (ONE_LESS_EULER + x * polynomial(SERIES, x));
}

/** Γ(z) = (z − 1)(z − 2)…Γ(z₀) with z₀ within 1/2 of 2. */
function stepDown(z: number): number {
  let product = 1;
  let rest = z;
  while (rest >= 2.5) {
    rest -= 1;
    product *= rest;
  }
  return Math.log(product) + aboutTwo(rest - 2);
}

function stirling(z: number): number {
  if (z > 1e300) return z * (Math.log(z) - 1);
  return (z - 0.5) * Math.log(z) - z + HALF_LN_TWO_PI + polynomial(STIRLING, 1 / (z * z)) / z;
}
