import { invariant } from '../invariant';
import { ok, type Result, refuse } from '../result';
import { type ConeShape, checkConeShape, coneHeightMm, SEAT_ANGLE_DEG } from './geometry';
import { type SeatedCone, seatCone } from './seating';

/** A blade further out than this is no blade for this cone. */
const REACH_DEG = 30;

/** What the cut is stopped by: the nose measured to size, or the length of the cone (a stop on the body). */
export type ConeHeldBy = 'nose' | 'length';

/** What a blade ground to a wrong angle, or a nose off its size, does to the cone. */
export interface ConeError {
  /** The cone as it is cut. */
  readonly cut: ConeShape;
  readonly lengthMm: number;
  /** Longer (positive) or shorter than it should be. */
  readonly lengthChangeMm: number;
  readonly noseChangeMm: number;
  readonly seated: SeatedCone;
  /** How much deeper (positive) the nose goes into the seat than that of a true cone. */
  readonly noseDeeperMm: number;
}

/** How far out the cut is: the blade's included angle, what the cut is stopped by, the nose, and the seat it goes into. */
export interface ConeCutError {
  readonly angleErrorDeg: number;
  readonly heldBy?: ConeHeldBy;
  readonly noseErrorMm?: number;
  readonly seatAngleDeg?: number;
}

/** The same as `coneWithAngleError` for the door: an error that leaves no cone is refused in a sentence instead. */
export function checkConeError(shape: ConeShape, error: ConeCutError): Result<ConeError> {
  const cut = cutShape(shape, error);
  const inReach = Math.abs(error.angleErrorDeg) <= REACH_DEG && checkConeShape(cut).ok;
  if (inReach) return ok(coneWithAngleError(shape, error));
  return refuse(
    'cone-error',
    'With errors as large as these no cone is left on this tube. Check the figures.',
  );
}

/**
 * The cone that a blade cuts whose included angle is out by so much (positive: wider), the nose held to size or the length held
 * by a stop. Length held: d′ = D − 2·h·tan(α + e/2). Nose held: h′ = (D − d) ÷ (2·tan(α + e/2)). Domain: the cone that comes out
 * can exist; throws otherwise. Source: formula; right-angled triangles of the section.
 */
export function coneWithAngleError(shape: ConeShape, error: ConeCutError): ConeError {
  const cut = cutShape(shape, error);
  const trueLengthMm = coneHeightMm(shape);
  const lengthMm = coneHeightMm(cut);
  const seated = seatCone(cut, error.seatAngleDeg);
  return {
    cut,
    lengthMm,
    lengthChangeMm: lengthMm - trueLengthMm,
    noseChangeMm: cut.noseMm - shape.noseMm,
    seated,
    noseDeeperMm: seatCone(shape, error.seatAngleDeg).noseToSeatPointMm - seated.noseToSeatPointMm,
  };
}

function cutShape(
  shape: ConeShape,
  { angleErrorDeg, heldBy = 'nose', noseErrorMm = 0 }: ConeCutError,
): ConeShape {
  const coneAngleDeg = shape.coneAngleDeg + angleErrorDeg;
  const slope = Math.tan((coneAngleDeg * Math.PI) / 360);
  const noseMm = heldBy === 'nose' ? shape.noseMm : shape.odMm - 2 * coneHeightMm(shape) * slope;
  return { odMm: shape.odMm, noseMm: noseMm + noseErrorMm, coneAngleDeg };
}

/**
 * By how much a blade's included angle may be too wide before the contact leaves the nose and jumps to the large end: the
 * seat's angle less the cone's. 1° for 59° in 60°. At the error itself the whole face touches. Source: formula.
 * @example angleErrorToLargeEndDeg({ odMm: 9.525, noseMm: 6.35, coneAngleDeg: 59 }) // => 1
 */
export function angleErrorToLargeEndDeg(shape: ConeShape, seatAngleDeg = SEAT_ANGLE_DEG): number {
  invariant(seatAngleDeg > 0 && seatAngleDeg < 180, 'a seat angle lies between 0 and 180 degrees');
  return seatAngleDeg - shape.coneAngleDeg;
}

/**
 * How much further out of its seat a nose stands that is larger by 1 mm, contact at the small end: 1 ÷ (2·tan β), 0.866 for a seat of
 * 60°. The cone's length shortens by 1 ÷ (2·tan α) as well. Source: formula.
 */
export function standOffPerNoseMm(seatAngleDeg = SEAT_ANGLE_DEG): number {
  invariant(seatAngleDeg > 0 && seatAngleDeg < 180, 'a seat angle lies between 0 and 180 degrees');
  return 1 / (2 * Math.tan((seatAngleDeg * Math.PI) / 360));
}
