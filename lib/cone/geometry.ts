import { invariant } from '../invariant';
import { ok, type Result, refuse } from '../result';

/** A cone turned on the nose of a tube. */
export interface ConeShape {
  /** D: the tube's outside diameter, where the cone begins. */
  readonly odMm: number;
  /** d: the cone's small end, at the nose. */
  readonly noseMm: number;
  /** Included angle, degrees (both sides together); the formulas take α, half of it. */
  readonly coneAngleDeg: number;
}

/** Included angle of the fitting's seat. Common practice, no source: confirm in the fitting maker's manual. */
export const SEAT_ANGLE_DEG = 60;

/** Accepts a cone that can exist, or says in a sentence why not. For the door: the formulas below only assert it. */
export function checkConeShape(shape: ConeShape): Result<ConeShape> {
  const { odMm, noseMm, coneAngleDeg } = shape;
  if (!(odMm > 0 && Number.isFinite(odMm))) {
    return refuse('cone-od', 'The tube outside diameter must be above zero.', 'odMm');
  }
  if (!(noseMm > 0)) return refuse('cone-nose', 'The cone’s small end must be above zero.', 'noseMm');
  if (!(noseMm < odMm)) {
    return refuse(
      'cone-nose',
      'The cone’s small end must be smaller than the tube outside diameter.',
      'noseMm',
    );
  }
  if (!(coneAngleDeg > 0 && coneAngleDeg < 180)) {
    return refuse(
      'cone-angle',
      'The cone’s included angle must lie between 0 and 180 degrees.',
      'coneAngleDeg',
    );
  }
  return ok(shape);
}

/**
 * Axial length of the cone, mm: h = (D − d) ÷ (2·tan α), α half the included angle. Domain: 0 < d < D,
 * 0° < included angle < 180°. Source: right-angled triangle of the cone's section.
 */
export function coneHeightMm(shape: ConeShape): number {
  assertConeShape(shape);
  return (shape.odMm - shape.noseMm) / (2 * tanHalf(shape.coneAngleDeg));
}

/**
 * Metal that a blade removes from one end, mm³: the cylinder of the tube less the cone left standing,
 * V = (π/4)·D²·h − (π·h/12)·(D² + D·d + d²). This is the solid between nose plane and the cone's large end; what the
 * bore has already taken is not subtracted, as the bore lies inside the nose. Domain as `coneHeightMm`.
 * Source: volume of a frustum.
 */
export function coneVolumeMm3(shape: ConeShape): number {
  const { odMm, noseMm } = shape;
  const heightMm = coneHeightMm(shape);
  const cylinderMm3 = (Math.PI / 4) * odMm ** 2 * heightMm;
  const frustumMm3 = ((Math.PI * heightMm) / 12) * (odMm ** 2 + odMm * noseMm + noseMm ** 2);
  return cylinderMm3 - frustumMm3;
}

/**
 * Radial gap at the cone's large end when its nose touches the seat, mm: h·(tan(seat/2) − tan(cone/2)). Positive for a
 * cone narrower than its seat (59° in 60°): only the small end can touch, which is why a nick there is fatal.
 * Zero at equal angles, negative where a wider cone would touch at its large end first. Domain as `coneHeightMm`.
 */
export function seatGapMm(shape: ConeShape, seatAngleDeg = SEAT_ANGLE_DEG): number {
  invariant(
    seatAngleDeg > 0 && seatAngleDeg < 180,
    'seatGapMm requires a seat angle between 0 and 180 degrees',
  );
  return coneHeightMm(shape) * (tanHalf(seatAngleDeg) - tanHalf(shape.coneAngleDeg));
}

function assertConeShape(shape: ConeShape): void {
  const checked = checkConeShape(shape);
  invariant(checked.ok, checked.ok ? '' : checked.refusal.sentence);
}

function tanHalf(includedAngleDeg: number): number {
  return Math.tan((includedAngleDeg * Math.PI) / 360);
}
