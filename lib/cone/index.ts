export {
  angleErrorToLargeEndDeg,
  type ConeCutError,
  type ConeError,
  type ConeHeldBy,
  checkConeError,
  coneWithAngleError,
  standOffPerNoseMm,
} from './angle-error';
export {
  type ConeShape,
  checkConeShape,
  coneHeightMm,
  coneVolumeMm3,
  SEAT_ANGLE_DEG,
  seatGapMm,
} from './geometry';
export { type SeatContact, type SeatedCone, seatCone } from './seating';
