import { invariant } from '../invariant';
import { normalCdf } from '../numeric/normal';

/** Normal density, φ(z). */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/**
 * Standard normal loss, L(z) = E[(Z − z)⁺] = φ(z) − z·(1 − Φ(z)): how much demand on average goes beyond what is on the
 * shelf, in standard deviations. Domain: every number. Source: formula.
 */
export function standardNormalLoss(z: number): number {
  return normalDensity(z) - z * normalCdf(-z);
}

/**
 * The complement, E[(z − Z)⁺] = z + L(z): what is left over on average. Source: formula.
 */
export function standardNormalLeftover(z: number): number {
  return normalDensity(z) + z * normalCdf(z);
}

/**
 * Units short on average when demand is normal and `stock` is on the shelf: sd·L((stock − mean)/sd). Domain: sd > 0.
 */
export function normalLoss(
  stock: number,
  { mean, sd }: { readonly mean: number; readonly sd: number },
): number {
  invariant(sd > 0, 'normalLoss requires a standard deviation above 0');
  return sd * standardNormalLoss((stock - mean) / sd);
}
