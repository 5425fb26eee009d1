import { invariant } from '../invariant';

/** Abscissae and weights of the 16-point Gauss–Legendre rule on −1 … 1, positive half. */
const NODES = [
  0.09501250983763744, 0.2816035507792589, 0.4580167776572274, 0.6178762444026438, 0.755404408355003,
  0.8656312023878318, 0.9445750230732326, 0.9894009349916499,
];
const WEIGHTS = [
  0.1894506104550685, 0.1826034150449236, 0.16915651939500254, 0.14959598881657674, 0.12462897125553388,
  0.09515851168249279, 0.062253523938647894, 0.027152459411754096,
];

/**
 * Integral of a smooth function over pieces that meet at `breaks` (rising): 16-point Gauss–Legendre on each. Put a break
 * wherever the function turns sharply. Exact for polynomials of degree 31.
 * Domain: at least 2 finite breaks. Source: published. Gauss–Legendre quadrature, Abramowitz and Stegun table 25.4.
 * @example integratePieces(() => 2, [0, 1, 3]) // => 6
 */
export function integratePieces(f: (x: number) => number, breaks: readonly number[]): number {
  invariant(breaks.length >= 2, 'integratePieces requires at least 2 breaks');
  let sum = 0;
  for (let i = 1; i < breaks.length; i++) {
    const [from, to] = [breaks[i - 1] as number, breaks[i] as number];
    if (to > from) sum += gauss(f, (from + to) / 2, (to - from) / 2);
  }
  return sum;
}

function gauss(f: (x: number) => number, centre: number, half: number): number {
  let sum = 0;
  for (let i = 0; i < NODES.length; i++) {
    const step = half * (NODES[i] as number);
    sum += (WEIGHTS[i] as number) * (f(centre - step) + f(centre + step));
  }
  return sum * half;
}
