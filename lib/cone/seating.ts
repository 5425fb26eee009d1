import { invariant } from '../invariant';
import { type ConeShape, coneHeightMm, SEAT_ANGLE_DEG } from './geometry';

/** Which end of the cone touches its seat: the small end (nose), the large end, or the whole face at equal angles. */
export type SeatContact = 'small-end' | 'large-end' | 'whole-face';

/** A cone pushed home into its seat. */
export interface SeatedCone {
  readonly contact: SeatContact;
  /** Diameter of the ring on which it touches; at equal angles that of the small end. */
  readonly contactDiameterMm: number;
  /** Radial gaps between cone and seat; the one at the contact is 0. */
  readonly gapAtSmallEndMm: number;
  readonly gapAtLargeEndMm: number;
  /** From the nose plane to the point where the seat's sides would meet: how deep the tube goes. Smaller is deeper. */
  readonly noseToSeatPointMm: number;
}

/** Angles closer than this are the same: far below what any gauge reads. */
const SAME_ANGLE_DEG = 1e-9;

/**
 * Where a cone comes to rest in its seat. A cone narrower than its seat touches at the small end only: nose to seat point
 * a = d ÷ (2·tan β), gap at the large end h·(tan β − tan α). A wider one touches at the large end: a = D ÷ (2·tan β) − h, gap at the
 * small end h·(tan α − tan β). Symbols: D tube, d nose, h cone length, α and β half the included angles of cone and seat.
 * Domain: a cone that can exist, seat 0° to 180°. Geometry of rigid bodies: no thread, no torque, no yielding.
 * Source: right-angled triangles of the section.
 */
export function seatCone(shape: ConeShape, seatAngleDeg = SEAT_ANGLE_DEG): SeatedCone {
  invariant(
    seatAngleDeg > 0 && seatAngleDeg < 180,
    'seatCone requires a seat angle between 0 and 180 degrees',
  );
  const heightMm = coneHeightMm(shape);
  const seat = Math.tan((seatAngleDeg * Math.PI) / 360);
  const cone = Math.tan((shape.coneAngleDeg * Math.PI) / 360);
  const wider = shape.coneAngleDeg - seatAngleDeg;
  const gapMm = heightMm * Math.abs(seat - cone);
  if (wider > SAME_ANGLE_DEG) {
    return {
      contact: 'large-end',
      contactDiameterMm: shape.odMm,
      gapAtSmallEndMm: gapMm,
      gapAtLargeEndMm: 0,
      noseToSeatPointMm: shape.odMm / (2 * seat) - heightMm,
    };
  }
  return {
    contact: wider < -SAME_ANGLE_DEG ? 'small-end' : 'whole-face',
    contactDiameterMm: shape.noseMm,
    gapAtSmallEndMm: 0,
    gapAtLargeEndMm: wider < -SAME_ANGLE_DEG ? gapMm : 0,
    noseToSeatPointMm: shape.noseMm / (2 * seat),
  };
}
